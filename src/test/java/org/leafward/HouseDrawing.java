package org.leafward;

import org.springframework.modulith.core.ApplicationModules;
import org.springframework.modulith.docs.Documenter;

/**
 * Writes diagrams and a page for each module to target/spring-modulith-docs; no test, as
 * it takes a minute and finds nothing.
 */
public final class HouseDrawing {

	private HouseDrawing() {
	}

	/**
	 * Draws.
	 * @param args none
	 */
	public static void main(String[] args) {
		new Documenter(ApplicationModules.of(Application.class)).writeDocumentation();
	}

}
