package hornwright.bench.plan.instead;

import java.util.Map;

/**
 * How a material looks, and whether it comes off again (bench judgement, laid as is usual for it).
 *
 * @param reversible "yes" or "partly"
 * @param laid with what it is commonly laid, which decides that
 */
public record Look(String words, String reversible, String laid) {
    private static final Look UNKNOWN = new Look("not described", "partly", "nobody has said");
    private static final Map<String, Look> KNOWN = Map.of(
            "natural cork", new Look("tan, grained, matt", "yes", "shellac"),
            "cork-rubber composite", new Look("tan with dark specks, even", "partly", "contact cement"),
            "woven wool felt", new Look("woolly, edges a little frayed, in any colour", "yes", "shellac"),
            "dense wool felt", new Look("close felt with a clean edge, in any colour", "yes", "shellac"),
            "synthetic felt", new Look("very even, slightly glossy", "partly", "contact cement"),
            "PTFE", new Look("white, waxy, smooth", "partly", "contact cement"),
            "leather", new Look("smooth or suede, white to brown", "yes", "shellac"));

    static Look of(String material) {
        return KNOWN.getOrDefault(material, UNKNOWN);
    }
}
