package org.leafward.accounts;

import java.io.Serializable;
import java.util.Set;

/**
 * What somebody may do beyond looking after their own plants.
 *
 * @param roles their roles
 * @param counties names of the counties that they serve as a specialist
 */
public record Granted(Set<Role> roles, Set<String> counties) implements Serializable {

	/** Nothing more. */
	public static final Granted NOTHING = new Granted(Set.of(), Set.of());

	public Granted {
		roles = Set.copyOf(roles);
		counties = Set.copyOf(counties);
	}

	/**
	 * Whether they serve a county.
	 * @param county its name; case doesn't matter
	 * @return true for operators too
	 */
	public boolean serves(String county) {
		return this.roles.contains(Role.OPERATOR) || this.counties.stream().anyMatch(county::equalsIgnoreCase);
	}

}
