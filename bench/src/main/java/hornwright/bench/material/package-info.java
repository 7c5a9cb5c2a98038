/**
 * What cork, felt and the rest do under a key: how they give, what they give back, how they pack. Every figure says
 * whether it is typical, set by this shop or measured by this shop.
 *
 * <p>Main type: {@link hornwright.bench.material.Materials}. It moves no key. Read {@code docs/method/materials.md} first.
 */
@NullMarked
package hornwright.bench.material;

import org.jspecify.annotations.NullMarked;
