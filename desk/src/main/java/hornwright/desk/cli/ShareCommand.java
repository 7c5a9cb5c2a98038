package hornwright.desk.cli;

import hornwright.desk.json.BadInput;
import hornwright.desk.json.Out;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.ShareArchive;
import hornwright.desk.use.Shop;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** {@code share --out FILE}: what is known of horns, packed for another shop. */
@Command(
        name = "share",
        mixinStandardHelpOptions = true,
        description = "Packs what is known of horns for another shop; no owner and no job is among it.")
final class ShareCommand implements Callable<Integer> {
    private final Streams streams;

    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Hornwright root;

    @Mixin
    private ShopPlace shop = new ShopPlace();

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "the zip to write; must not exist yet")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(names = "--maker", paramLabel = "NAME", description = "only horns of this maker")
    private @Nullable String maker;

    ShareCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        try (Shop open = OpenShop.look(shop.where(), Clock.systemUTC())) {
            ShareArchive verb = new ShareArchive(open);
            if (maker != null
                    && verb.contents().stream().noneMatch(one -> one.maker().equals(maker))) {
                throw new BadInput(
                        "",
                        "nothing is known of horns by \"" + maker + "\"",
                        String.join(
                                ", ",
                                verb.contents().stream()
                                        .map(ShareArchive.Contents::maker)
                                        .toList()));
            }
            Files.write(out, verb.pack(maker), StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException there) {
            throw new BadInput("", out + " is there already", "--out evidence.zip");
        } catch (NoSuchFileException none) {
            throw new BadInput("", "there is no folder for " + out, "--out evidence.zip");
        }
        streams.out()
                .println(root.json() ? Out.object().put("file", out.toString()).toString() : "packed in " + out);
        streams.out().flush();
        return ExitCode.DONE;
    }
}
