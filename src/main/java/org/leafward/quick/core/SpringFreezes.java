package org.leafward.quick.core;

import java.time.LocalDate;
import org.springframework.modulith.NamedInterface;

/**
 * The last freezes of a spring.
 *
 * @param usual later than this in one spring of two
 * @param safe later than this in one spring of ten
 */
@NamedInterface("drawers")
public record SpringFreezes(LocalDate usual, LocalDate safe) {
}
