package boughwright.shelf;

import boughwright.storage.Settling;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Photos of products, one each, as JPEG that was written here: nothing of what a camera writes beside a picture is kept. */
@Repository
public class Photos {

    private final JdbcClient database;
    private final Settling settling;
    private final ShelfBooks books;

    Photos(JdbcClient database, Settling settling, ShelfBooks books) {
        this.database = database;
        this.settling = settling;
        this.books = books;
    }

    public Optional<byte[]> of(String sku) {
        return database.sql("select picture from product_photo where sku = :sku").param("sku", sku).query((row, i) -> row.getBytes("picture")).optional();
    }

    public boolean has(String sku) {
        return database.sql("select count(*) from product_photo where sku = :sku").param("sku", sku).query(Integer.class).single() > 0;
    }

    /** In the place of the one that was there. @param jpeg small enough for a page */
    public synchronized void keep(String sku, byte[] jpeg) {
        database.sql("delete from product_photo where sku = :sku").param("sku", sku).update();
        database.sql("insert into product_photo (sku, kept_at, picture) values (:sku, :now, :picture)").param("sku", sku).param("now", books.now())
                .param("picture", jpeg).update();
        settling.settle();
    }

    public void remove(String sku) {
        database.sql("delete from product_photo where sku = :sku").param("sku", sku).update();
        settling.settle();
    }
}
