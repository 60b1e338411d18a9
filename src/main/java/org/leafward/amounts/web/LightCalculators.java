package org.leafward.amounts.web;

import java.util.List;
import org.leafward.pages.Choice;

/** The calculators of light and cover, for lists of calculators. */
final class LightCalculators {

	/** Addresses with their titles. */
	static final List<Choice> PAGES = List.of(
			new Choice("/calculators/light", "Hardening off: how much light and how long, day by day"),
			new Choice("/calculators/cover", "Cover tonight: does it need one, and which"));

	private LightCalculators() {
	}

}
