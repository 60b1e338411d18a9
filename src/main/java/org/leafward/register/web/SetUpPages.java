package org.leafward.register.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.pages.Choice;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.register.NewSite;
import org.leafward.register.PlaceReader;
import org.leafward.register.Register;
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
 * The steps to a new site: where it is, what it is like, and all details to look through.
 * Each is a form that carries what was told before.
 */
@Controller
class SetUpPages {

	/** What belongs to the step of the place when it can't be used. */
	private static final Set<String> OF_PLACE = Set.of("county", "latitude", "longitude", "zone", "region");

	private static final int MOST_OWNERS = 200;

	private final Register register;

	private final People people;

	private final Viewers viewers;

	private final PlaceReader places;

	SetUpPages(Register register, People people, Viewers viewers, PlaceReader places) {
		this.register = register;
		this.people = people;
		this.viewers = viewers;
		this.places = places;
	}

	@GetMapping("/sites/new")
	String begin(@RequestParam(defaultValue = "place") String step, Model model) {
		SetUp none = SetUp.of(Map.of());
		if (step.equals("all")) {
			return all(new SiteRequest(null, null, null, null, null, null, null, "loam", "full-sun", "average", "flat",
					null, null, null, null, null, null, null), none, Map.of(), model);
		}
		return place(none, Map.of(), model);
	}

	@PostMapping("/sites/new")
	String step(@RequestParam(defaultValue = "add") String go, @ModelAttribute("form") SiteRequest form,
			@RequestParam Map<String, String> parameters, Model model, HttpServletResponse response) {
		SetUp told = SetUp.of(parameters);
		try {
			if (PlaceReader.pointed(parameters)) {
				told = told.pointing(this.places.clicked(parameters));
				return like(told.at(this.places.read(told.place())), Map.of(), model);
			}
			return switch (go) {
				case "county", "coordinates" -> like(told.at(this.places.read(told.place())), Map.of(), model);
				case "back-to-place" -> place(told.beforeTests(), Map.of(), model);
				case "back-to-like" -> like(told.beforeTests(), Map.of(), model);
				case "try" -> tried(told, model);
				case "all" -> checked(told, model);
				default -> add(form);
			};
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return again(PlaceReader.pointed(parameters) ? "map" : go, form, told, ex.byField(), model);
		}
	}

	/** Soil and flow as the tests by hand tell them, before anything else is checked. */
	private String tried(SetUp told, Model model) {
		told.worked();
		return like(told, Map.of(), model);
	}

	private String checked(SetUp told, Model model) {
		Findings all = new Findings();
		Supplier<SetUp> worked = all.read(told::worked);
		all.check(() -> told.with("soil", "").request().toSite());
		SiteRequest request = all.give(() -> worked.get().request());
		request.toSite();
		return all(request, told, Map.of(), model);
	}

	/** Back to the step that what can't be used belongs to. */
	private String again(String go, SiteRequest form, SetUp told, Map<String, String> errors, Model model) {
		return switch (go) {
			case "map", "county", "coordinates", "back-to-place" -> place(told, errors, model);
			case "try", "all", "back-to-like" -> errors.keySet().stream().anyMatch(OF_PLACE::contains)
					? place(told, errors, model) : like(told, height(errors), model);
			default -> all(form, told, errors, model);
		};
	}

	/** What is wrong with a height is told in the name of the site's field. */
	private static Map<String, String> height(Map<String, String> errors) {
		Map<String, String> named = new LinkedHashMap<>();
		errors.forEach((field, words) -> named.put(field.equals("elevationMetres") ? "elevation" : field,
				words.replace("elevationMetres", "the height")));
		return named;
	}

	private String add(SiteRequest form) {
		Findings all = new Findings();
		Supplier<PersonId> owner = all.read(() -> owner(form));
		Supplier<NewSite> site = all.read(form::toSite);
		return "redirect:/sites/" + all.give(() -> this.register.addSite(owner.get(), site.get())).id();
	}

	private PersonId owner(SiteRequest form) {
		Viewer viewer = this.viewers.current();
		if (viewer.person() != null) {
			return new PersonId(viewer.person());
		}
		String given = Given.text("owner", form.owner());
		try {
			return new PersonId(UUID.fromString(given));
		}
		catch (IllegalArgumentException ex) {
			throw new BadInput("'%s' is not one of the people".formatted(given), "owner", "choose one of the list");
		}
	}

	private String place(SetUp told, Map<String, String> errors, Model model) {
		String code = this.places.code(told.get("county"), told.get("region"));
		// A county tells its zone; another place outside of all has to tell its own.
		SetUp shown = code.isEmpty() ? told : told.with("county", code).with("zone", "");
		common(shown.fields(), errors, model);
		model.addAttribute("beside", told.besidePlace());
		model.addAttribute("counties", this.places.counties());
		model.addAttribute("maps", this.places.maps());
		model.addAttribute("units", PlaceReader.units());
		return "register/set-up-place";
	}

	private String like(SetUp told, Map<String, String> errors, Model model) {
		common(told.fields(), errors, model);
		model.addAttribute("beside", told.besideLike());
		model.addAttribute("units", PlaceReader.units());
		List<Choice> soils = new ArrayList<>(List.of(new Choice("", "I don’t know; it counts as loam")));
		soils.addAll(HandTests.soils());
		model.addAttribute("soils", soils);
		model.addAttribute("suns", RegisterPages.choices(Sun.values(), Sun::words));
		model.addAttribute("winds", RegisterPages.choices(Wind.values(), Wind::words));
		model.addAttribute("lies", PlacePages.lies());
		HandTests.choices(model);
		told.tests().told(model);
		return "register/set-up-like";
	}

	private String all(SiteRequest form, SetUp told, Map<String, String> errors, Model model) {
		common(form, errors, model);
		model.addAttribute("beside", told.besideAll());
		model.addAttribute("owners", (this.viewers.current().person() != null) ? List.of() : owners());
		model.addAttribute("soils", RegisterPages.choices(SoilTexture.values(), SoilTexture::words));
		model.addAttribute("suns", RegisterPages.choices(Sun.values(), Sun::words));
		model.addAttribute("winds", RegisterPages.choices(Wind.values(), Wind::words));
		model.addAttribute("lies", PlacePages.lies());
		return "register/site-form";
	}

	private static void common(Object form, Map<String, String> errors, Model model) {
		model.addAttribute("section", "sites");
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
	}

	private List<Choice> owners() {
		List<Choice> owners = new ArrayList<>();
		for (Person person : this.people.list(0, MOST_OWNERS)) {
			owners.add(new Choice(person.id().toString(), person.name()));
		}
		return owners;
	}

}
