package hornwright.desk.journal;

import java.util.Objects;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.exception.FlywayValidateException;

/** Brings the tables up to this program's version, and refuses tables a newer program made. */
final class Schema {
    private final Flyway flyway;

    private Schema(Flyway flyway) {
        this.flyway = flyway;
    }

    static Schema of(Database database) {
        return new Schema(Flyway.configure()
                .dataSource(database.forSchema())
                .locations("classpath:db/common", "classpath:db/" + database.dialect())
                .cleanDisabled(true)
                .ignoreMigrationPatterns("*:future")
                .load());
    }

    void bringUp() {
        refuseNewer();
        try {
            flyway.migrate();
        } catch (FlywayValidateException e) {
            throw new Unusable("The tables are not the ones this program made: " + e.getMessage(), e);
        }
    }

    /** Leaves the tables alone and refuses them unless they are exactly what this program knows. */
    void refuseOther() {
        refuseNewer();
        MigrationInfo current = flyway.info().current();
        if (current == null) {
            throw new Unusable("There is no shop in this database");
        }
        if (!newestKnown().equals(current.getVersion())) {
            throw new Unusable("This data was written by an older program; start this one once to bring it up to date");
        }
    }

    private void refuseNewer() {
        MigrationInfo current = flyway.info().current();
        if (current == null) {
            return;
        }
        MigrationVersion found = Objects.requireNonNull(current.getVersion());
        MigrationVersion known = newestKnown();
        if (found.isNewerThan(known.getVersion())) {
            throw new Unusable(
                    "This data was written by a newer program (tables %s, this one knows %s); nothing was touched"
                            .formatted(found, known));
        }
    }

    private MigrationVersion newestKnown() {
        MigrationVersion newest = MigrationVersion.EMPTY;
        for (MigrationInfo migration : flyway.info().all()) {
            MigrationVersion version = migration.getVersion();
            if (version != null
                    && !migration.getState().name().startsWith("FUTURE")
                    && version.isAtLeast(newest.getVersion())) {
                newest = version;
            }
        }
        return newest;
    }
}
