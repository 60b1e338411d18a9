package org.leafward.advisories.web;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.AdvisoryText;
import org.leafward.advisories.share.DayAndTime;
import org.leafward.language.Language;
import org.leafward.regions.County;
import org.leafward.regions.Regions;

/**
 * An advisory as pages show it.
 *
 * @param path address of its page
 * @param event what it is
 * @param state where it stands, in words
 * @param current whether people should act on it
 * @param when from when to when, a sentence
 * @param sent when its latest message was sent
 * @param counties names of its counties
 * @param facts how bad, how soon, how sure
 * @param words its words for the reader
 * @param language of these words
 * @param other the words in the other language; null for none
 * @param otherLanguage of the other words
 */
public record AdvisoryView(String path, String event, String state, boolean current, String when, String sent,
		List<String> counties, String facts, AdvisoryText words, String language, @Nullable AdvisoryText other,
		String otherLanguage) {

	static AdvisoryView of(Advisory advisory, Regions regions, Language language) {
		boolean spanish = language == Language.SPANISH && advisory.spanish() != null;
		Set<String> codes = advisory.area().counties();
		List<String> names = regions.counties()
			.stream()
			.filter((one) -> codes.contains(one.code()))
			.map(County::name)
			.toList();
		return new AdvisoryView(advisory.path(), spanish ? advisory.event().spanish() : advisory.event().english(),
				state(advisory.state()), advisory.state().current(), DayAndTime.sentence(advisory),
				DayAndTime.of(advisory.sent(), advisory.zone()), names, facts(advisory),
				spanish ? advisory.text(Language.SPANISH) : advisory.english(), spanish ? "es" : "en",
				spanish ? advisory.english() : advisory.spanish(), spanish ? "en" : "es");
	}

	private static String state(AdvisoryState state) {
		return switch (state) {
			case AHEAD -> "It has not begun.";
			case IN_FORCE -> "It is in force now.";
			case OVER -> "It is over.";
			case CANCELLED -> "It was called off.";
		};
	}

	private static String facts(Advisory advisory) {
		return advisory.facts().severity().words() + "; " + advisory.facts().certainty().words() + "; "
				+ advisory.facts().urgency().words();
	}

}
