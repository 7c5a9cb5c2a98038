package hornwright.bench.feel;

/**
 * What one touch asks of its finger.
 *
 * @param key that carries the touch
 * @param newtons least force, at the touch, at which the touch has done its work
 * @param closes whether its work is to shut cups, else to open them
 */
public record TouchForce(String key, double newtons, boolean closes) {}
