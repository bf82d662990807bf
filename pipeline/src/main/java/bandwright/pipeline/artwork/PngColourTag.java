package bandwright.pipeline.artwork;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How a PNG's colours are meant, as its chunks say (ISO/IEC 15948, 11.3.3).
 *
 * @param srgb an sRGB chunk, or a cICP chunk that says the same
 * @param profile the iCCP chunk
 * @param gamma gAMA, times 100,000
 * @param chroma cHRM, times 100,000: white x y, red x y, green x y, blue x y; empty without
 */
public record PngColourTag(boolean srgb, Optional<Span> profile, OptionalInt gamma, List<Integer> chroma) {
    /** 1/2.2, the value that stands for sRGB's curve (ISO/IEC 15948, 11.3.3.5). */
    private static final int SRGB_GAMMA = 45_455;
    /** sRGB's own chromaticities (ISO/IEC 15948, table 13). */
    private static final List<Integer> SRGB_CHROMA =
            List.of(31_270, 32_900, 64_000, 33_000, 30_000, 60_000, 15_000, 6_000);

    public PngColourTag {
        chroma = List.copyOf(chroma);
    }

    /** Whether the curve is sRGB's; programs round it differently, hence the half per cent (our judgement). */
    public boolean hasSrgbCurve() {
        return srgb || gamma.isEmpty() || Math.abs(gamma.getAsInt() - SRGB_GAMMA) <= SRGB_GAMMA / 200;
    }

    /** Whether the primaries are sRGB's, within what rounding to three places leaves. */
    public boolean hasSrgbPrimaries() {
        if (srgb || chroma.isEmpty()) {
            return true;
        }
        for (int i = 0; i < chroma.size(); i++) {
            if (Math.abs(chroma.get(i) - SRGB_CHROMA.get(i)) > 100) {
                return false;
            }
        }
        return true;
    }

    /** The chromaticities, sRGB's own where the file says none. */
    public List<Integer> chromaOrSrgb() {
        return chroma.isEmpty() ? SRGB_CHROMA : chroma;
    }
}
