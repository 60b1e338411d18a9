package org.leafward.lookalikes.core;

import java.util.List;
import java.util.Set;

/**
 * Which plants get a cause, in the words of the catalogue.
 *
 * @param trouble the catalogue's name of the cause, for example {@code oak-wilt}; empty
 * when it has none
 * @param only plant groups, botanical genera or species' identifiers that alone get it;
 * empty when any plant may
 * @param never those that never do
 * @param carries traits of species that are known hosts, for example
 * {@code bacterial-leaf-scorch-host}
 */
public record Hosts(String trouble, List<String> only, List<String> never, Set<String> carries) {

	/** Any plant. */
	public static final Hosts ANY = new Hosts("", List.of(), List.of(), Set.of());

	public Hosts {
		only = List.copyOf(only);
		never = List.copyOf(never);
		carries = Set.copyOf(carries);
	}

}
