package org.leafward.plants;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a species grows and what it suffers from: facts for readers and for telling causes
 * of damage apart, which rules don't address. Common knowledge unless one of the species'
 * sources names the fact.
 *
 * @param blooms when it blooms; null where that doesn't matter
 * @param bloomsOn the wood that bears the flowers; null for plants without wood
 * @param light the light it wants; null where not known
 * @param tolerance what it bears
 * @param troubles diseases, pests and disorders it is known for, the most usual first, as
 * names of the catalogue
 * @param caution what whoever plants or handles it must know; null when there is nothing
 */
public record Habits(@Nullable BloomTime blooms, @Nullable BloomsOn bloomsOn, @Nullable Light light,
		Tolerance tolerance, List<String> troubles, @Nullable String caution) {

	/** Nothing is known. */
	public static final Habits UNKNOWN = new Habits(null, null, null, Tolerance.UNKNOWN, List.of(), null);

	public Habits {
		troubles = List.copyOf(troubles);
	}

}
