package org.leafward.support;

import org.leafward.register.Register;
import org.leafward.register.Site;

/** A site of the demo, whatever other tests have added to it. */
public final class FarrowHouse {

	private FarrowHouse() {
	}

	/**
	 * Finds it.
	 * @param register the register of the demo
	 * @return the site of Ines Farrow
	 */
	public static Site in(Register register) {
		return register.sites(0, 200)
			.stream()
			.filter((site) -> site.name().equals("Farrow house"))
			.findFirst()
			.orElseThrow();
	}

}
