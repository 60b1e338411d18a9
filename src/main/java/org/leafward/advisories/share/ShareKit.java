package org.leafward.advisories.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.AdvisoryText;
import org.leafward.advisories.dates.CountyDate;
import org.leafward.advisories.dates.CountyDates;
import org.leafward.advisories.dates.SeasonDate;
import org.leafward.advisories.desk.AdvisorySettings;
import org.leafward.advisories.picture.Drawn;
import org.leafward.advisories.picture.Poster;
import org.leafward.advisories.picture.PosterDrawing;
import org.leafward.language.Language;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.stereotype.Service;

/** Texts and pictures of an advisory or a season marker. */
@Service
public class ShareKit {

	/** Characters that fit where little does. */
	public static final int BRIEF = 280;

	/** Least and most that a county is filled by its date. */
	private static final double LIGHT = 0.12;

	private static final double DARK = 0.92;

	private final Regions regions;

	private final CountyDates dates;

	private final PosterDrawing drawing;

	private final AdvisorySettings settings;

	ShareKit(Regions regions, CountyDates dates, PosterDrawing drawing, AdvisorySettings settings) {
		this.regions = regions;
		this.dates = dates;
		this.drawing = drawing;
		this.settings = settings;
	}

	/**
	 * Texts of an advisory.
	 * @param advisory the advisory
	 * @return in English, and in Spanish where there is some
	 */
	public List<ShareText> texts(Advisory advisory) {
		List<ShareText> all = new ArrayList<>();
		all.add(text(advisory, Language.ENGLISH));
		if (advisory.spanish() != null) {
			all.add(text(advisory, Language.SPANISH));
		}
		return all;
	}

	private ShareText text(Advisory advisory, Language language) {
		boolean spanish = language == Language.SPANISH;
		AdvisoryText words = advisory.text(language);
		String link = this.settings.absolute(advisory.path()).toString();
		String counties = names(advisory);
		String span = DayAndTime.span(advisory, language);
		String said = ended(words.headline()) + " " + counties + ", " + span + ". ";
		boolean off = advisory.state() == AdvisoryState.CANCELLED;
		String brief = (off ? ended(words.headline()) + " " : shortened(said, BRIEF - link.length() - 1)) + link;
		String full = String.join("\n\n", words.headline(), words.what(),
				(spanish ? "Dónde: " : "Where: ") + words.where(), (spanish ? "Cuándo: " : "When: ") + words.when(),
				(spanish ? "Qué puede pasar: " : "What it can do: ") + words.impacts(),
				(spanish ? "Qué hacer: " : "What to do: ") + words.toDo(),
				(spanish ? "Más y lo más reciente: " : "More, and the latest: ") + link, source(language));
		return new ShareText(language.code(), brief, full);
	}

	private static String ended(String sentence) {
		return sentence.matches(".*[.!?]$") ? sentence : sentence + ".";
	}

	private static String shortened(String text, int most) {
		return (text.length() <= most) ? text : text.substring(0, Math.max(0, most - 2)).strip() + "… ";
	}

	private String names(Advisory advisory) {
		return counties(advisory).stream().map(County::name).collect(Collectors.joining(", "));
	}

	private List<County> counties(Advisory advisory) {
		return this.regions.counties()
			.stream()
			.filter((one) -> advisory.area().counties().contains(one.code()))
			.toList();
	}

	private String source(Language language) {
		return ((language == Language.SPANISH) ? "Fuente: " : "Source: ") + this.settings.senderName()
				+ (!this.settings.invented() ? "" : (language == Language.SPANISH)
						? ". El lugar y el tiempo son inventados." : ". Place and weather are invented.");
	}

	/**
	 * A picture of an advisory.
	 * @param advisory the advisory
	 * @param form its form
	 * @param language of its words
	 * @return empty when the server has no counties
	 */
	public Optional<Drawn> picture(Advisory advisory, Poster.Form form, Language language) {
		if (this.regions.counties().isEmpty()) {
			return Optional.empty();
		}
		AdvisoryText words = advisory.text(language);
		boolean spanish = language == Language.SPANISH;
		List<Poster.Shown> shown = this.regions.counties()
			.stream()
			.map((one) -> new Poster.Shown(one.code(), null,
					advisory.area().counties().contains(one.code()) ? DARK : 0))
			.toList();
		String event = spanish ? advisory.event().spanish() : advisory.event().english();
		String alt = event + ": " + ended(words.headline()) + " " + names(advisory) + ", "
				+ DayAndTime.span(advisory, language) + ". "
				+ (spanish ? "Mapa de los condados: están oscuros aquellos para los que vale."
						: "Map of the counties: those that it is for are dark.");
		List<String> lines = (advisory.state() == AdvisoryState.CANCELLED) ? List.of(names(advisory))
				: List.of(names(advisory), DayAndTime.span(advisory, language));
		Poster poster = new Poster(event, words.headline(), lines, source(language), shown, alt);
		return Optional.of(this.drawing.draw(poster, this.regions.counties(), form));
	}

	/**
	 * Texts of a season marker.
	 * @param marker which
	 * @return in English and Spanish
	 */
	public List<ShareText> texts(SeasonDate marker) {
		return List.of(text(marker, Language.ENGLISH), text(marker, Language.SPANISH));
	}

	private ShareText text(SeasonDate marker, Language language) {
		boolean spanish = language == Language.SPANISH;
		List<CountyDate> dated = dated(marker);
		String title = marker.title().in(language);
		String link = this.settings.absolute("/season-dates/" + marker.code()).toString();
		String list = dated.stream()
			.map((one) -> one.county().name() + " " + DayAndTime.day(Objects.requireNonNull(one.date()), language))
			.collect(Collectors.joining(", "));
		String brief = shortened(title + ": " + list + ". ", BRIEF - link.length() - 1) + link;
		String rows = dated.stream()
			.map((one) -> "%s: %s (%s – %s)".formatted(one.county().name(),
					DayAndTime.day(Objects.requireNonNull(one.date()), language),
					DayAndTime.day(Objects.requireNonNull(one.early()), language),
					DayAndTime.day(Objects.requireNonNull(one.late()), language)))
			.collect(Collectors.joining("\n"));
		String full = String.join("\n\n", title, spanish
				? "Primero la fecha media; entre paréntesis, las que en un año de cada diez quedan antes o después."
				: "The middle date first; in brackets those beyond which one year in ten falls on either side.", rows,
				marker.use().in(language),
				(spanish ? "De dónde salen las fechas: " : "Where the dates come from: ") + link, sources(language));
		return new ShareText(language.code(), brief, full);
	}

	private List<CountyDate> dated(SeasonDate marker) {
		return this.dates.of(marker).stream().filter((one) -> one.date() != null).toList();
	}

	private String sources(Language language) {
		List<String> names = this.dates.sources(this.regions.counties());
		String stations = names.isEmpty() ? "" : (language == Language.SPANISH)
				? " Estaciones: " + String.join(", ", names) + "." : " Stations: " + String.join(", ", names) + ".";
		String source = source(language);
		return source + (source.endsWith(".") ? "" : ".") + stations;
	}

	/**
	 * A picture of a season marker: the counties by their date.
	 * @param marker which
	 * @param form its form
	 * @param language of its words
	 * @return empty when no county has a date
	 */
	public Optional<Drawn> picture(SeasonDate marker, Poster.Form form, Language language) {
		List<CountyDate> dated = dated(marker);
		if (dated.isEmpty()) {
			return Optional.empty();
		}
		int first = dated.stream().mapToInt(ShareKit::dayOfYear).min().orElseThrow();
		int last = dated.stream().mapToInt(ShareKit::dayOfYear).max().orElseThrow();
		List<Poster.Shown> shown = dated.stream().map((one) -> {
			double share = (last == first) ? 0.3 : (double) (dayOfYear(one) - first) / (last - first);
			return new Poster.Shown(one.county().code(), DayAndTime.day(Objects.requireNonNull(one.date()), language),
					LIGHT + (DARK - LIGHT) * share);
		}).toList();
		boolean spanish = language == Language.SPANISH;
		String title = marker.title().in(language);
		String alt = title + ". " + dated.stream()
			.map((one) -> one.county().name() + ": " + DayAndTime.day(Objects.requireNonNull(one.date()), language))
			.collect(Collectors.joining(", ")) + ". "
				+ (spanish ? "Mapa de los condados: cuanto más tarde, más oscuro."
						: "Map of the counties: the later, the darker.");
		Poster poster = new Poster(spanish ? "Fechas de la temporada" : "Dates of the season", title,
				List.of(spanish ? "Fechas medias; la mitad de los años es más temprano, la mitad más tarde."
						: "Middle dates: half of all years are earlier, half are later."),
				sources(language), shown, alt);
		return Optional.of(this.drawing.draw(poster, this.regions.counties(), form));
	}

	private static int dayOfYear(CountyDate date) {
		return Objects.requireNonNull(date.date()).getDayOfYear();
	}

}
