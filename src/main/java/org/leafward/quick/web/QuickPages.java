package org.leafward.quick.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.language.Language;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Units;
import org.leafward.measure.BadInput;
import org.leafward.pages.Choice;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.quick.MadeCalendar;
import org.leafward.quick.NewQuickCalendar;
import org.leafward.quick.QuickCalendars;
import org.leafward.quick.core.PlantFinder;
import org.leafward.quick.core.PlantKinds;
import org.leafward.register.FoundPlace;
import org.leafward.register.PlaceReader;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * The steps to a calendar: the place, the plants, the light. Each is a form that carries
 * what was told before.
 */
@Controller
class QuickPages {

	private final Catalogue catalogue;

	private final PlaceReader places;

	private final QuickCalendars calendars;

	private final MadePage made;

	private final Phrasebooks books;

	QuickPages(Catalogue catalogue, PlaceReader places, QuickCalendars calendars, MadePage made, Phrasebooks books) {
		this.books = books;
		this.catalogue = catalogue;
		this.places = places;
		this.calendars = calendars;
		this.made = made;
	}

	@GetMapping("/quick")
	String begin(@ModelAttribute("given") QuickForm given, Model model) {
		return place(given.shown(UUID::randomUUID), Map.of(), model);
	}

	@PostMapping("/quick")
	String step(@ModelAttribute("given") QuickForm given, @RequestParam(defaultValue = "place") String go,
			@RequestParam Map<String, String> parameters, Model model, HttpServletResponse response) {
		QuickForm form = given.shown(UUID::randomUUID);
		try {
			if (PlaceReader.pointed(parameters)) {
				form = form.pointing(this.places.clicked(parameters));
				return fromPlace(form, model);
			}
			return switch (go) {
				case "county", "coordinates", "place" -> fromPlace(form, model);
				case "back-to-place" -> place(form, Map.of(), model);
				case "light" -> light(checked(form), Map.of(), model);
				default -> plants(form, given.search(), model, response);
			};
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return again(form, ex, model);
		}
	}

	private String fromPlace(QuickForm form, Model model) {
		FoundPlace place = this.places.read(form.place());
		return plants(form.at(place), place, nothing(), Map.of(), model);
	}

	/** Back to the step that what can't be used belongs to. */
	private String again(QuickForm form, BadInput refused, Model model) {
		Map<String, String> errors = refused.byField();
		Set<String> fields = errors.keySet();
		if (fields.stream().anyMatch(List.of("sun", "wind", "soil", "name", "language", "system")::contains)) {
			return light(form, errors, model);
		}
		if (fields.contains("search")) {
			return plants(form, this.places.read(form.place()), nothing(), errors, model);
		}
		return place(form, errors, model);
	}

	private QuickForm checked(QuickForm form) {
		this.places.read(form.place());
		NewQuickCalendar.checkCount(form.listed(this.catalogue).size());
		return form;
	}

	@PostMapping("/quick/calendar")
	String make(@ModelAttribute("given") QuickForm given, Model model, HttpServletResponse response) {
		QuickForm form = given.shown(UUID::randomUUID);
		try {
			checked(form);
			MadeCalendar calendar = this.calendars
				.make(form.toCalendar(this.places.read(form.place()), this.catalogue, this.books));
			return this.made.show(calendar, model, response);
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return again(form, ex, model);
		}
	}

	private String place(QuickForm form, Map<String, String> errors, Model model) {
		common(form, errors, model);
		model.addAttribute("beside", form.besidePlace());
		model.addAttribute("counties", this.places.counties());
		model.addAttribute("maps", this.places.maps());
		model.addAttribute("units", PlaceReader.units());
		return "quick/place";
	}

	private String plants(QuickForm form, @Nullable String search, Model model, HttpServletResponse response) {
		FoundPlace place = this.places.read(form.place());
		try {
			PlantFinder.Found found = PlantFinder.find(this.catalogue, (search != null) ? search : "");
			return plants(form, place, found, Map.of(), model);
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return plants(form, place, nothing(), ex.byField(), model);
		}
	}

	private static PlantFinder.Found nothing() {
		return new PlantFinder.Found(List.of(), List.of(), List.of());
	}

	private String plants(QuickForm form, FoundPlace place, PlantFinder.Found found, Map<String, String> errors,
			Model model) {
		Set<Species> wanted = new HashSet<>(form.listed(this.catalogue));
		wanted.addAll(found.sure());
		List<Species> list = this.catalogue.all().stream().filter(wanted::contains).toList();
		common(form.having(list, errors.containsKey("search") ? form.search() : ""), errors, model);
		model.addAttribute("place", place);
		model.addAttribute("beside", form.besidePlants());
		model.addAttribute("list", PlantRow.of(list, form));
		model.addAttribute("offers", without(found.offers(), wanted));
		model.addAttribute("unknown", without(found.unknown(), wanted));
		model.addAttribute("strange", form.unknown(this.catalogue));
		model.addAttribute("most", NewQuickCalendar.MOST);
		model.addAttribute("kinds",
				PlantKinds.of(this.catalogue.all().stream().filter((one) -> !wanted.contains(one)).toList()));
		return "quick/plants";
	}

	private static List<PlantFinder.Offer> without(List<PlantFinder.Offer> offers, Set<Species> wanted) {
		return offers.stream()
			.map((one) -> new PlantFinder.Offer(one.typed(),
					one.species().stream().filter((each) -> !wanted.contains(each)).toList()))
			.toList();
	}

	private String light(QuickForm form, Map<String, String> errors, Model model) {
		common(form, errors, model);
		model.addAttribute("beside", form.besideLight());
		model.addAttribute("place", this.places.read(form.place()));
		model.addAttribute("count", form.listed(this.catalogue).size());
		model.addAttribute("suns", choices(Sun.values(), Sun::words));
		model.addAttribute("winds", choices(Wind.values(), Wind::words));
		model.addAttribute("languages",
				Arrays.stream(Language.values()).map((one) -> new Choice(one.code(), one.words())).toList());
		model.addAttribute("systems",
				Arrays.stream(Units.values()).map((one) -> new Choice(one.code(), one.words())).toList());
		List<Choice> soils = new ArrayList<>(List.of(new Choice("", "I don’t know")));
		soils.addAll(choices(SoilTexture.values(), SoilTexture::words));
		model.addAttribute("soils", soils);
		return "quick/light";
	}

	private static <E extends Enum<E>> List<Choice> choices(E[] values, Function<E, String> words) {
		return Arrays.stream(values)
			.map((one) -> new Choice(one.name().toLowerCase(Locale.ROOT).replace('_', '-'), words.apply(one)))
			.collect(Collectors.toList());
	}

	private static void common(QuickForm form, Map<String, String> errors, Model model) {
		model.addAttribute("section", "quick");
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
	}

}
