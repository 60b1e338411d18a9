package org.leafward.counties.core;

import org.leafward.care.CareTask;

/**
 * A task and the species that it is for.
 *
 * @param task a task of a planting
 * @param code identifier of the species
 * @param name its English name
 */
public record Grown(CareTask task, String code, String name) {
}
