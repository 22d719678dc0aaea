package boughwright.shelf;

import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Photos of products, one each, as JPEG that was written here: nothing of what a camera writes beside a picture is kept. */
@Repository
public class Photos {

    private final JdbcClient database;
    private final ShelfBooks books;

    Photos(JdbcClient database, ShelfBooks books) {
        this.database = database;
        this.books = books;
    }

    public Optional<byte[]> of(String sku) {
        return database.sql("select picture from product_photo where sku = :sku").param("sku", sku).query((row, i) -> row.getBytes("picture")).optional();
    }

    public boolean has(String sku) {
        return database.sql("select count(*) from product_photo where sku = :sku").param("sku", sku).query(Integer.class).single() > 0;
    }

    /** In the place of the one that was there. @param jpeg small enough for a page */
    public void keep(String sku, byte[] jpeg) {
        books.alone(version -> {
            database.sql("delete from product_photo where sku = :sku").param("sku", sku).update();
            return database.sql("insert into product_photo (sku, kept_at, picture) values (:sku, :now, :picture)").param("sku", sku)
                    .param("now", books.now()).param("picture", jpeg).update();
        });
    }

    public void remove(String sku) {
        books.alone(version -> database.sql("delete from product_photo where sku = :sku").param("sku", sku).update());
    }
}
