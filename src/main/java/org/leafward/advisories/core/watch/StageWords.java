package org.leafward.advisories.core.watch;

import org.leafward.advisories.Bilingual;

/** Says what a cold night does to the buds of a crop. */
final class StageWords {

	private StageWords() {
	}

	static Bilingual of(BudRisk risk) {
		Stages.Stage stage = risk.stage();
		String tenth = FigureWords.fahrenheit(stage.killsTenth());
		String nine = FigureWords.fahrenheit(stage.killsNine());
		return new Bilingual(
				"%s at %s: one bud in ten is killed at %s, nine in ten at %s".formatted(risk.crop().words().english(),
						stage.words().english(), tenth, nine),
				"%s en %s: uno de cada diez brotes muere a %s, nueve de cada diez a %s"
					.formatted(risk.crop().words().spanish(), stage.words().spanish(), tenth, nine));
	}

}
