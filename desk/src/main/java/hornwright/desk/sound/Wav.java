package hornwright.desk.sound;

import hornwright.desk.json.BadInput;
import hornwright.engines.pitch.Recording;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * A WAV file: PCM of 8, 16, 24 or 32 bits or floating point of 32 or 64, any rate, mono or stereo. Stereo is heard as the
 * middle of both channels. A header that promises more than the file holds is a fault, not a guess.
 */
public final class Wav {
    private static final int PCM = 1;
    private static final int FLOAT = 3;
    private static final int EXTENSIBLE = 0xFFFE;
    private static final String EXAMPLE = "a WAV file, PCM of 8 to 32 bits or floating point, mono or stereo";
    /** Half an hour of stereo at the usual rate and depth is 318 MB; nobody plays a scale so long. */
    private static final int MOST_BYTES = 320_000_000;

    private record Format(int sort, int channels, int rate, int bits) {
        int frameBytes() {
            return channels * bits / 8;
        }
    }

    private final ByteBuffer bytes;

    private Wav(byte[] file) {
        bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    }

    /** @throws BadInput if it is no WAV file this program can read, with a sentence that says why */
    public static Recording read(byte[] file) {
        if (file.length > MOST_BYTES) {
            throw refused("the file is larger than 320 MB");
        }
        return new Wav(file).recording();
    }

    private Recording recording() {
        if (bytes.limit() < 12 || !"RIFF".equals(tag(0)) || !"WAVE".equals(tag(8))) {
            throw refused("this is not a WAV file");
        }
        Format format = null;
        int at = 12;
        while (at + 8 <= bytes.limit()) {
            String name = tag(at);
            long size = Integer.toUnsignedLong(bytes.getInt(at + 4));
            int body = at + 8;
            if (body + size > bytes.limit()) {
                throw refused("the file ends in the middle of its \"%s\" part; it may not have been closed"
                        .formatted(name.strip()));
            }
            switch (name) {
                case "fmt " -> format = format(body, (int) size);
                case "data" -> {
                    return samples(format, body, (int) size);
                }
                default -> {
                    // Titles, markers and the like are passed over.
                }
            }
            at = body + (int) size + (int) (size & 1);
        }
        throw refused("the file holds no sound");
    }

    private Format format(int body, int size) {
        if (size < 16) {
            throw refused("the file's description of its sound is too short");
        }
        int sort = bytes.getShort(body) & 0xFFFF;
        if (sort == EXTENSIBLE && size >= 26) {
            sort = bytes.getShort(body + 24) & 0xFFFF;
        }
        Format format = new Format(sort, bytes.getShort(body + 2), bytes.getInt(body + 4), bytes.getShort(body + 14));
        boolean known = (format.sort() == PCM && isOneOf(format.bits(), 8, 16, 24, 32))
                || (format.sort() == FLOAT && isOneOf(format.bits(), 32, 64));
        if (!known) {
            throw refused("sound of sort %d with %d bits cannot be read".formatted(format.sort(), format.bits()));
        }
        if (format.channels() != 1 && format.channels() != 2) {
            throw refused("the file has %d channels".formatted(format.channels()));
        }
        if (format.rate() < 4000 || format.rate() > 768_000) {
            throw refused("%d samples a second cannot be used".formatted(format.rate()));
        }
        return format;
    }

    private Recording samples(@Nullable Format format, int body, int size) {
        if (format == null) {
            throw refused("the sound comes before its description");
        }
        int frames = size / format.frameBytes();
        if (frames == 0) {
            throw refused("the file holds no sound");
        }
        double[] mono = new double[frames];
        int width = format.bits() / 8;
        for (int i = 0; i < frames; i++) {
            int at = body + i * format.frameBytes();
            double sum = 0;
            for (int channel = 0; channel < format.channels(); channel++) {
                sum += sample(format, at + channel * width);
            }
            mono[i] = sum / format.channels();
            if (!Double.isFinite(mono[i])) {
                throw refused("sample %d is not a number".formatted(i));
            }
        }
        return new Recording(mono, format.rate());
    }

    private double sample(Format format, int at) {
        if (format.sort() == FLOAT) {
            return format.bits() == 32 ? bytes.getFloat(at) : bytes.getDouble(at);
        }
        return switch (format.bits()) {
            case 8 -> ((bytes.get(at) & 0xFF) - 128) / 128.0;
            case 16 -> bytes.getShort(at) / 32_768.0;
            case 24 -> ((bytes.get(at + 2) << 16) | (bytes.getShort(at) & 0xFFFF)) / 8_388_608.0;
            default -> bytes.getInt(at) / 2_147_483_648.0;
        };
    }

    private String tag(int at) {
        byte[] four = new byte[4];
        bytes.get(at, four);
        return new String(four, StandardCharsets.ISO_8859_1);
    }

    private static boolean isOneOf(int value, int... allowed) {
        return java.util.Arrays.stream(allowed).anyMatch(one -> one == value);
    }

    private static BadInput refused(String what) {
        return new BadInput("", what, EXAMPLE);
    }
}
