package hornwright.desk.journal;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What pages showed, kept with what it followed from. It can be thrown away: whoever needs it can reckon it again. */
public final class Shown {
    private final Database database;

    public Shown(Database database) {
        this.database = database;
    }

    /**
     * One thing a page showed.
     *
     * @param follows all it depends on; once anything of that is another, it is of no use
     */
    public record Piece(String name, String follows, String content) {}

    /** By name. */
    public Map<String, Piece> all() {
        return database.reader()
                .withHandle(handle -> handle
                        .createQuery("select name, follows, content from shown")
                        .map((row, context) ->
                                new Piece(row.getString("name"), row.getString("follows"), row.getString("content")))
                        .stream()
                        .collect(Collectors.toMap(Piece::name, piece -> piece)));
    }

    /** Puts these in the place of those of the same names. */
    public void keep(List<Piece> pieces) {
        database.writer().useTransaction(transaction -> {
            database.claim(transaction);
            for (Piece piece : pieces) {
                transaction
                        .createUpdate("delete from shown where name = :name")
                        .bind("name", piece.name())
                        .execute();
                transaction
                        .createUpdate("insert into shown (name, follows, content) values (:name, :follows, :content)")
                        .bindMethods(piece)
                        .execute();
            }
        });
    }
}
