package boughwright.shelf;

import boughwright.intake.Mapping;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** How the headings of files were matched with our columns, so that a supplier's next file needs no matching. */
@Repository
public class FileMappings {

    private final JdbcClient database;
    private final ShelfBooks books;

    FileMappings(JdbcClient database, ShelfBooks books) {
        this.database = database;
        this.books = books;
    }

    /** What was kept last for a file with these headings. */
    public Optional<Mapping> of(List<String> headings) {
        return database.sql("select mapping from file_mapping where signature = :signature").param("signature", Mapping.signature(headings))
                .query(String.class).optional().flatMap(Mapping::read);
    }

    public void keep(List<String> headings, Mapping mapping) {
        books.alone(version -> kept(Mapping.signature(headings), mapping));
    }

    private int kept(String signature, Mapping mapping) {
        int known = database.sql("update file_mapping set mapping = :mapping, kept_at = :now where signature = :signature").param("mapping", mapping.toJson())
                .param("now", books.now()).param("signature", signature).update();
        return known > 0 ? known : database.sql("insert into file_mapping (signature, mapping, kept_at) values (:signature, :mapping, :now)")
                .param("signature", signature).param("mapping", mapping.toJson()).param("now", books.now()).update();
    }
}
