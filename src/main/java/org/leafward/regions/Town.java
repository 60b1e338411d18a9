package org.leafward.regions;

import org.leafward.regions.core.Position;

/**
 * A town on the map, for finding one's way.
 *
 * @param name its name
 * @param at where it is
 */
public record Town(String name, Position at) {
}
