package hornwright.desk.journal;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteDataSource;

/**
 * Opens SQLite connections that all carry the same settings, and reads every one back: a connection on which a setting
 * did not take is not handed out. Why each is set stands in docs/decisions/sqlite-settings.md.
 */
final class PinnedSqlite extends SQLiteDataSource {
    /** SQLite 3.7.0 to 3.51.2 can damage a file when a commit and a checkpoint meet; 3.51.3 mended it. */
    static final String OLDEST = "3.51.3";

    private final Map<String, String> settings;

    private PinnedSqlite(SQLiteConfig config, Path file, Map<String, String> settings) {
        super(config);
        setUrl("jdbc:sqlite:" + file);
        this.settings = settings;
    }

    static PinnedSqlite writing(Path file) {
        return new PinnedSqlite(config(SQLiteConfig.TransactionMode.IMMEDIATE), file, settings(false));
    }

    static PinnedSqlite reading(Path file) {
        return new PinnedSqlite(config(SQLiteConfig.TransactionMode.DEFERRED), file, settings(true));
    }

    /** Setting to the value it must read back as. */
    static Map<String, String> settings(boolean readOnly) {
        Map<String, String> settings = new LinkedHashMap<>();
        settings.put("busy_timeout", "5000");
        settings.put("journal_mode", "wal");
        settings.put("synchronous", "2");
        settings.put("foreign_keys", "1");
        settings.put("trusted_schema", "0");
        settings.put("cell_size_check", "1");
        settings.put("mmap_size", "0");
        settings.put("fullfsync", "1");
        settings.put("checkpoint_fullfsync", "1");
        settings.put("query_only", readOnly ? "1" : "0");
        return settings;
    }

    @Override
    public Connection getConnection() throws SQLException {
        return pinned(super.getConnection());
    }

    @Override
    public SQLiteConnection getConnection(@Nullable String user, @Nullable String password) throws SQLException {
        return super.getConnection(user, password);
    }

    private Connection pinned(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (Map.Entry<String, String> setting : settings.entrySet()) {
                statement.execute("pragma %s = %s".formatted(setting.getKey(), setting.getValue()));
                String found = readBack(statement, setting.getKey());
                if (!setting.getValue().equals(found)) {
                    throw new SQLException("SQLite did not take %s = %s, it says %s"
                            .formatted(setting.getKey(), setting.getValue(), found));
                }
            }
            return connection;
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
    }

    static @Nullable String readBack(Statement statement, String setting) throws SQLException {
        try (var rows = statement.executeQuery("pragma " + setting)) {
            return rows.next() ? rows.getString(1) : null;
        }
    }

    private static SQLiteConfig config(SQLiteConfig.TransactionMode mode) {
        SQLiteConfig config = new SQLiteConfig();
        config.setTransactionMode(mode);
        config.setBusyTimeout(5000);
        return config;
    }
}
