package hornwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One shop packs, another takes in. */
final class ShareCommandTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @Test
    void what_one_shop_packs_another_takes_in_once() throws Exception {
        Path table = Files.writeString(
                folder.resolve("looks.csv"),
                "maker,serial,voice,place,material\nTarrant & Loe,50101,alto,foot.d,cork\n");
        assertThat(run("evidence", table.toString(), "--data", shop("one")).code())
                .isZero();
        String zip = folder.resolve("evidence.zip").toString();
        assertThat(run("share", "--out", zip, "--data", shop("one")).code()).isZero();
        assertThat(run("share", "--out", zip, "--data", shop("one")).err()).contains("is there already");
        assertThat(run("share", "--out", zip + "2", "--maker", "Nobody", "--data", shop("one"))
                        .err())
                .contains("nothing is known", "Tarrant & Loe");
        assertThat(run("receive", zip, "--try", "--data", shop("two")).out()).contains("2 new", "nothing written");
        assertThat(run("receive", zip, "--data", shop("two")).out()).contains("2 new", "taken in");
        assertThat(run("receive", zip, "--data", shop("two")).out()).contains("2 known", "nothing written");
        byte[] damaged = Files.readAllBytes(Path.of(zip));
        damaged[damaged.length / 3] ^= 1;
        Path broken = Files.write(folder.resolve("broken.zip"), damaged);
        Shell.Result refused = run("receive", broken.toString(), "--data", shop("three"));
        assertThat(refused.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(refused.out()).isEmpty();
    }

    private String shop(String name) {
        return folder.resolve(name).toString();
    }

    private static Shell.Result run(String... args) {
        return Shell.run("", args);
    }
}
