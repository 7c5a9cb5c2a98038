package hornwright.desk.cli;

import hornwright.desk.json.BadInput;
import hornwright.desk.json.Faults;
import hornwright.desk.json.Fields;
import hornwright.desk.json.StrictJson;
import hornwright.desk.reckon.Answer;
import hornwright.desk.reckon.Engine;
import hornwright.desk.reckon.Engines;
import hornwright.desk.reckon.PitchReckon;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.hipparchus.exception.MathRuntimeException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import tools.jackson.databind.JsonNode;

/** {@code reckon ENGINE [IN.json]}: one engine; every input is checked before anything is written. */
@Command(
        name = "reckon",
        mixinStandardHelpOptions = true,
        description = "Runs one engine: JSON in, one compact line out.")
final class ReckonCommand implements Callable<Integer> {
    private final Streams streams;

    @Parameters(
            index = "0",
            paramLabel = "ENGINE",
            description = "air, seat, linkage, action, spring, leak, belief, uncertainty, pitch")
    @SuppressWarnings("NullAway.Init")
    private String engineName;

    @Parameters(index = "1", paramLabel = "IN", arity = "0..1", description = "a file; standard input when absent")
    private @Nullable Path input;

    @Mixin
    private final PitchOptions pitch = new PitchOptions();

    ReckonCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        Engine engine = Engines.named(engineName).orElseThrow(() -> unknown(engineName));
        if (!(engine instanceof PitchReckon)) {
            pitch.refuseFor(engineName);
        }
        List<Answer> answers = engine instanceof PitchReckon
                ? List.of(PitchReckon.hear(sound(), pitch.wishes()))
                : compute(prepare(engine, StrictJson.objects(text())));
        answers.forEach(answer -> streams.out().println(answer.out()));
        streams.out().flush();
        List<String> shortfalls = answers.stream()
                .map(Answer::shortfall)
                .filter(java.util.Objects::nonNull)
                .toList();
        shortfalls.forEach(streams.err()::println);
        return shortfalls.isEmpty() ? ExitCode.DONE : ExitCode.SHORT;
    }

    private static List<Engine.Reckoning> prepare(Engine engine, List<JsonNode> objects) {
        Faults faults = new Faults();
        List<Engine.Reckoning> prepared = new ArrayList<>();
        for (int i = 0; i < objects.size(); i++) {
            prepared.add(Fields.of(objects.get(i), prefix(i), faults).read(engine::read));
        }
        faults.refuseIfAny();
        return prepared;
    }

    /** Computes all before the first is written: what only computing finds is still one refusal of the whole. */
    private static List<Answer> compute(List<Engine.Reckoning> prepared) {
        Faults faults = new Faults();
        List<Answer> answers = new ArrayList<>();
        for (int i = 0; i < prepared.size(); i++) {
            String prefix = prefix(i);
            try {
                answers.add(prepared.get(i).compute());
            } catch (BadInput bad) {
                faults.addAll(bad.faults().stream()
                        .map(fault -> fault.pointer().startsWith("#") ? fault : fault.within(prefix))
                        .toList());
            } catch (MathRuntimeException | IllegalArgumentException | IllegalStateException beyond) {
                faults.add(prefix, "these figures are beyond reckoning: " + beyond.getMessage(), "figures of a horn");
            }
        }
        faults.refuseIfAny();
        return answers;
    }

    private static String prefix(int index) {
        return index == 0 ? "" : "#" + (index + 1);
    }

    private String text() throws IOException {
        if (input == null) {
            return new String(streams.in().readAllBytes(), StandardCharsets.UTF_8);
        }
        try {
            return Files.readString(input);
        } catch (NoSuchFileException missing) {
            throw new BadInput(
                    "", "there is no file " + input, "a file that exists, or nothing to read standard input");
        }
    }

    private byte[] sound() throws IOException {
        if (input == null) {
            throw new BadInput("", "pitch needs a WAV file", "hornwright reckon pitch scale.wav");
        }
        try {
            return Files.readAllBytes(input);
        } catch (NoSuchFileException missing) {
            throw new BadInput("", "there is no file " + input, "a WAV file that exists");
        }
    }

    private static BadInput unknown(String name) {
        String known = Engines.all().stream().map(Engine::name).collect(Collectors.joining(", "));
        return new BadInput("", "there is no engine \"" + name + "\"", "one of " + known);
    }
}
