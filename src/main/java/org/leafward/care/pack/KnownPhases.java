package org.leafward.care.pack;

import java.util.Set;

/**
 * The names of phases and events that anchors can hang on.
 *
 * @param phases phases of the plant's year
 * @param events events that people log
 */
record KnownPhases(Set<String> phases, Set<String> events) {
}
