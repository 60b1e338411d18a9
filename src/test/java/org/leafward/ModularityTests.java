package org.leafward;

import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

/** The walls of the house: which capability may know which. */
class ModularityTests {

	private final ApplicationModules modules = ApplicationModules.of(Application.class);

	@Test
	void modulesKnowOnlyWhatTheyMay() {
		this.modules.verify();
	}

}
