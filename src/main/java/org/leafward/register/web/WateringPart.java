package org.leafward.register.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.measure.Given;
import org.leafward.pages.Choice;
import org.leafward.pages.Formats;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.SeenSite;
import org.leafward.register.Site;
import org.leafward.register.WaterUnit;
import org.leafward.register.Watering;
import org.leafward.register.Waterings;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** The waterings on the page of a site's weather: the form and the latest of them. */
@Component
class WateringPart {

	private static final int PAGE = 10;

	private static final double MILLIMETRES_PER_INCH = 25.4;

	private final Register register;

	private final Waterings waterings;

	private final People people;

	WateringPart(Register register, Waterings waterings, People people) {
		this.register = register;
		this.waterings = waterings;
		this.people = people;
	}

	/**
	 * A watering in words.
	 *
	 * @param id identifier
	 * @param day on which
	 * @param where the whole site or a planting
	 * @param amount its depth
	 * @param more the note, and who entered it
	 */
	record Row(UUID id, String day, String where, String amount, String more) {
	}

	void put(SeenSite seen, WateringRequest form, Map<String, String> errors, int page, LocalDate today, Model model) {
		Site site = seen.site();
		Map<PlantingId, String> labels = this.register.plantingsOf(site.id())
			.stream()
			.collect(Collectors.toMap(Planting::id, Planting::label));
		// They carry notes and names, which are for those who look after the site.
		List<Watering> rows = seen.mayChange() ? this.waterings.latest(site.id(), Given.page(page), PAGE) : List.of();
		model.addAttribute("watering", form);
		model.addAttribute("wateringErrors", errors);
		model.addAttribute("beds", beds(this.register, site));
		model.addAttribute("units",
				Arrays.stream(WaterUnit.values())
					.map((unit) -> new Choice(SiteAnswer.word(unit), unit.words()))
					.toList());
		model.addAttribute("waterings",
				rows.stream().map((one) -> row(one, labels, new Formats(today.getYear()))).toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext",
				rows.size() == PAGE && !this.waterings.latest(site.id(), (page + 1) * PAGE, 1).isEmpty());
	}

	static List<Choice> beds(Register register, Site site) {
		List<Choice> beds = new ArrayList<>(List.of(new Choice("", "the whole site")));
		register.plantingsOf(site.id()).forEach((one) -> beds.add(new Choice(one.id().toString(), one.label())));
		return beds;
	}

	private Row row(Watering one, Map<PlantingId, String> labels, Formats formats) {
		String where = (one.planting() == null) ? "the whole site" : labels.getOrDefault(one.planting(), "a planting");
		String by = name(one.by()).map((name) -> "entered by " + name).orElse("entered by an operator");
		return new Row(one.id().value(), formats.day(one.day()), where, amount(one.millimetres(), formats),
				one.note().isEmpty() ? by : one.note() + "; " + by);
	}

	/** For example "12 mm (0.47 in)". */
	static String amount(double millimetres, Formats formats) {
		return "%s mm (%s in)".formatted(formats.number(millimetres, (millimetres < 10) ? 1 : 0),
				formats.number(millimetres / MILLIMETRES_PER_INCH, 2));
	}

	private Optional<String> name(@Nullable PersonId id) {
		return (id == null) ? Optional.empty() : this.people.find(id).map(Person::name);
	}

}
