package hornwright.desk.sound;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.function.IntToDoubleFunction;

/** Writes WAV files for the tests, byte by byte. */
public final class WavFile {
    /** How samples are kept. */
    public enum Sort {
        PCM(1),
        FLOAT(3),
        EXTENSIBLE(0xFFFE);

        private final int code;

        Sort(int code) {
            this.code = code;
        }
    }

    private WavFile() {}

    public static byte[] of(Sort sort, int bits, int channels, int rate, int frames, IntToDoubleFunction sample) {
        int header = sort == Sort.EXTENSIBLE ? 40 : 16;
        int data = frames * channels * bits / 8;
        ByteBuffer out = ByteBuffer.allocate(12 + 8 + header + 8 + data).order(ByteOrder.LITTLE_ENDIAN);
        tag(out, "RIFF").putInt(out.capacity() - 8);
        tag(out, "WAVE");
        tag(out, "fmt ").putInt(header);
        out.putShort((short) sort.code).putShort((short) channels).putInt(rate).putInt(rate * channels * bits / 8);
        out.putShort((short) (channels * bits / 8)).putShort((short) bits);
        if (sort == Sort.EXTENSIBLE) {
            out.putShort((short) 22)
                    .putShort((short) bits)
                    .putInt(0)
                    .putShort((short) 1)
                    .put(new byte[14]);
        }
        tag(out, "data").putInt(data);
        for (int i = 0; i < frames; i++) {
            for (int channel = 0; channel < channels; channel++) {
                put(out, sort, bits, sample.applyAsDouble(i));
            }
        }
        return out.array();
    }

    /** Mono of 16 bits. */
    public static byte[] of(int rate, double[] sound) {
        return of(Sort.PCM, 16, 1, rate, sound.length, i -> sound[i]);
    }

    private static ByteBuffer tag(ByteBuffer out, String tag) {
        return out.put(tag.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static void put(ByteBuffer out, Sort sort, int bits, double x) {
        if (sort == Sort.FLOAT) {
            if (bits == 32) {
                out.putFloat((float) x);
            } else {
                out.putDouble(x);
            }
            return;
        }
        switch (bits) {
            case 8 -> out.put((byte) Math.round(128 + 127 * x));
            case 16 -> out.putShort((short) Math.round(32_767 * x));
            case 24 -> {
                int whole = (int) Math.round(8_388_607 * x);
                out.putShort((short) whole).put((byte) (whole >> 16));
            }
            default -> out.putInt((int) Math.round(2_147_483_647.0 * x));
        }
    }
}
