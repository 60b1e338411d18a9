package org.leafward.pages;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The way from a calculator's answer to keeping it for a planting. Calculators know no
 * plantings; whoever does puts this beside their answers.
 *
 * @param href address, from the root
 * @param planting the planting that the figures came from; null when one is to be chosen
 * @param label what its people call it; null likewise
 */
public record KeepLink(String href, @Nullable UUID planting, @Nullable String label) {
}
