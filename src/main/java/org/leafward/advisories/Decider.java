package org.leafward.advisories;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Who decides.
 *
 * @param name the name that stands beside the decision
 * @param person their identifier; null for the operator token
 */
public record Decider(String name, @Nullable UUID person) {
}
