package hornwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.journal.Place;
import hornwright.desk.journal.Tamper;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ShopCommandsTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Path shop;

    @BeforeEach
    void demo() {
        shop = folder.resolve("shop");
        demoAt(shop).close();
    }

    @Test
    void a_sound_shop_passes_the_check_with_exit_zero() {
        Shell.Result result = run("check");
        assertThat(result.code()).isZero();
        assertThat(result.out()).contains("6 streams, 3 people").contains("all as it was written");
        assertThat(result.err()).isEmpty();
        assertThat(run("check", "--json").out()).startsWith("{\"edits\":").contains("\"faults\":[]");
    }

    @Test
    void an_edit_changed_behind_the_programs_back_is_found_with_exit_three() {
        Tamper.execute(shop, "update journal set edit = replace(edit, '48.75', '47.75') where edit like '%48.75%'");
        Shell.Result result = run("check");
        assertThat(result.code()).isEqualTo(3);
        assertThat(result.err()).contains("is not as it was written").doesNotContain("Exception");
        assertThat(run("check", "--json").out()).contains("is not as it was written");
    }

    @Test
    void an_edit_taken_out_a_photo_changed_and_a_card_forged_are_each_found() throws IOException {
        Tamper.execute(shop, "update card set title = 'forged' where job = 'q-0001'");
        assertThat(run("check").err()).contains("cards of the shelf");
        Tamper.execute(shop, "delete from journal where stream = 'job.q-0001' and seq = 9");
        assertThat(run("check").err()).contains("missing");
        assertThat(run("check").code()).isEqualTo(3);
    }

    @Test
    void a_file_that_is_no_database_any_more_is_told_in_a_sentence_with_exit_three() throws IOException {
        Files.writeString(shop.resolve("shop.db"), "this is not a database, it is a shopping list".repeat(200));
        Shell.Result result = run("check");
        assertThat(result.code()).isEqualTo(3);
        assertThat(result.err())
                .contains("cannot be opened")
                .doesNotContain("Exception")
                .hasLineCount(1);
    }

    @Test
    void pages_of_the_database_that_rot_are_found_or_the_shop_is_refused() throws IOException {
        byte[] sound = Files.readAllBytes(shop.resolve("shop.db"));
        java.util.Random random = new java.util.Random(11);
        for (int round = 0; round < 12; round++) {
            byte[] rotten = sound.clone();
            int page = 4096 * (1 + random.nextInt(sound.length / 4096 - 1));
            for (int i = 0; i < 512; i++) {
                rotten[page + i] = (byte) random.nextInt(256);
            }
            Files.write(shop.resolve("shop.db"), rotten);
            Shell.Result result = run("check");
            assertThat(result.code())
                    .as("round %d, page at %d: %s", round, page, result.out())
                    .isEqualTo(3);
            assertThat(result.err()).isNotBlank().doesNotContain("\tat ");
        }
    }

    @Test
    void tables_from_a_newer_program_are_refused_with_exit_three_and_left_alone() throws IOException {
        Tamper.execute(
                shop,
                "insert into flyway_schema_history (installed_rank, version, description, type, script, checksum,"
                        + " installed_by, execution_time, success)"
                        + " values (99, '99', 'from the future', 'SQL', 'V99__from_the_future.sql', 1, '', 1, 1)");
        byte[] before = Files.readAllBytes(shop.resolve("shop.db"));
        for (String[] command : new String[][] {
            {"check"},
            {"backup", folder.resolve("b").toString()},
            {"import", folder.resolve("x").toString()}
        }) {
            Shell.Result result = run(command);
            assertThat(result.code()).as(command[0]).isEqualTo(3);
            assertThat(result.err()).contains("newer program");
        }
        assertThat(Files.readAllBytes(shop.resolve("shop.db"))).isEqualTo(before);
    }

    @Test
    void edits_from_a_newer_program_can_be_looked_at_and_backed_up_but_not_added_to() {
        Path out = folder.resolve("out");
        run("export", "q-0002", "--out", out.toString());
        Tamper.append(shop, "job.q-0001", "horn-polished", 1, "{\"shine\":3}");

        Shell.Result check = run("check");
        assertThat(check.code()).isEqualTo(3);
        assertThat(check.err()).contains("'horn-polished', version 1, which only a newer program knows");
        Shell.Result added = run("import", out.toString());
        assertThat(added.code()).isEqualTo(3);
        assertThat(added.err()).contains("Nothing is written");
        assertThat(run("export", "q-0001", "--out", folder.resolve("no").toString())
                        .code())
                .isEqualTo(3);
        assertThat(run("export", "q-0002", "--out", folder.resolve("yes").toString())
                        .code())
                .isZero();
        assertThat(run("backup", folder.resolve("backup").toString()).code()).isZero();
    }

    @Test
    void a_backup_goes_on_beside_the_running_program_but_an_import_waits() {
        Path out = folder.resolve("out");
        try (Shop running = demoAt(shop)) {
            assertThat(run("backup", folder.resolve("backup").toString()).code())
                    .isZero();
            assertThat(run("check").code()).isZero();
            assertThat(run("export", "q-0001", "--out", out.toString()).code()).isZero();
            Shell.Result busy = run("import", out.toString());
            assertThat(busy.code()).isEqualTo(1);
            assertThat(busy.err()).contains("in use").hasLineCount(1);
            assertThat(running.jobNow("q-0001")).isNotNull();
        }
        assertThat(run("import", out.toString()).out()).contains("alto 41207 by Tarrant & Loe is q-0004 now");
    }

    @Test
    void a_backup_is_restored_into_a_new_folder_and_never_over_a_shop() {
        String backup = folder.resolve("backup").toString();
        assertThat(run("backup", backup, "--json").out()).contains("\"files\":3");
        Path other = folder.resolve("other");
        assertThat(Shell.run("", "restore", backup, "--data", other.toString()).code())
                .isZero();
        assertThat(Shell.run("", "check", "--data", other.toString()).code()).isZero();
        assertThat(run("restore", backup).code()).isEqualTo(2);
        assertThat(run("backup", backup).code()).isEqualTo(2);
    }

    @Test
    void what_is_not_there_is_bad_input() {
        assertThat(Shell.run("", "check", "--data", folder.resolve("none").toString())
                        .code())
                .isEqualTo(2);
        assertThat(folder.resolve("none")).doesNotExist();
        assertThat(run("export", "q-0099", "--out", folder.resolve("o").toString())
                        .code())
                .isEqualTo(2);
        assertThat(folder.resolve("o")).doesNotExist();
        assertThat(run("export", "../q", "--out", folder.resolve("o").toString())
                        .code())
                .isEqualTo(2);
        assertThat(run("import", folder.resolve("none").toString()).code()).isEqualTo(2);
        assertThat(run("restore", folder.resolve("none").toString()).code()).isEqualTo(2);
        assertThat(run("backup").code()).isEqualTo(2);
    }

    private Shell.Result run(String... args) {
        String[] all = java.util.Arrays.copyOf(args, args.length + 2);
        all[args.length] = "--data";
        all[args.length + 1] = shop.toString();
        return Shell.run("", all);
    }

    private static Shop demoAt(Path place) {
        return OpenShop.open(new OpenShop.Where.Folder(place), OpenShop.FirstRun.DEMO, Place.CLOCK);
    }
}
