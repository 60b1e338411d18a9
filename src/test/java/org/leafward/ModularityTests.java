package org.leafward;

import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;
import org.springframework.modulith.docs.Documenter;

/** The walls of the house: which capability may know which. */
class ModularityTests {

	private final ApplicationModules modules = ApplicationModules.of(Application.class);

	@Test
	void modulesKnowOnlyWhatTheyMay() {
		this.modules.verify();
	}

	/** Writes diagrams and a page for each module to target/spring-modulith-docs. */
	@Test
	void drawsTheHouse() {
		new Documenter(this.modules).writeDocumentation();
	}

}
