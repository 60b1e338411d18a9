package org.leafward.care.workshop;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Who publishes.
 *
 * @param name the name that stands in the history
 * @param person their identifier; null for the operator
 */
public record Author(String name, @Nullable UUID person) {
}
