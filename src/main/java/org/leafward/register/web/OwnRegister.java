package org.leafward.register.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.Brought;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.measure.BadInput;
import org.leafward.register.Bed;
import org.leafward.register.Beds;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.PlantPhotos;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTests;
import org.leafward.register.Watering;
import org.leafward.register.Waterings;
import org.springframework.stereotype.Component;

/**
 * The sites of a person and what grows there, in the words of the API, taken away and
 * brought back.
 */
@Component
class OwnRegister implements PersonalData {

	private static final int PAGE = 200;

	/** They are held in memory while they are packed. */
	private static final int MOST_PHOTOS = 60;

	private final Register register;

	private final Beds beds;

	private final Waterings waterings;

	private final SoilTests soilTests;

	private final PlantPhotos photos;

	OwnRegister(Register register, Beds beds, Waterings waterings, SoilTests soilTests, PlantPhotos photos) {
		this.register = register;
		this.beds = beds;
		this.waterings = waterings;
		this.soilTests = soilTests;
		this.photos = photos;
	}

	@Override
	public int order() {
		return 40;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		List<Map<String, Object>> sites = new ArrayList<>();
		List<Map<String, Object>> beds = new ArrayList<>();
		List<Map<String, Object>> plantings = new ArrayList<>();
		List<Map<String, Object>> water = new ArrayList<>();
		List<Map<String, Object>> tests = new ArrayList<>();
		List<Map<String, Object>> photos = new ArrayList<>();
		for (Site site : this.register.sitesOf(person)) {
			sites.add(row(SiteAnswer.of(site)));
			this.beds.ofSite(site.id()).forEach((one) -> beds.add(row(BedAnswer.of(one))));
			this.register.plantingsOf(site.id()).forEach((one) -> plantings.add(row(PlantingAnswer.of(one))));
			all((page) -> this.waterings.latest(site.id(), page, PAGE),
					(one) -> water.add(row(WateringAnswer.of(one))));
			all((page) -> this.soilTests.latest(site.id(), page, PAGE), (one) -> tests.add(row(one)));
			this.photos.of(site.id()).forEach((one) -> photos.add(row(one)));
		}
		Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
		all.put("sites", sites);
		all.put("beds", beds);
		all.put("plantings", plantings);
		all.put("waterings", water);
		all.put("soil-tests", tests);
		all.put("plant-photos", photos);
		return all;
	}

	@Override
	public Map<String, byte[]> files(PersonId person) {
		Map<String, byte[]> files = new LinkedHashMap<>();
		this.photos.picturesOf(person, MOST_PHOTOS)
			.forEach((id, jpeg) -> files.put("plant-photo-%s.jpg".formatted(id), jpeg));
		return files;
	}

	private static <T> void all(IntFunction<List<T>> pages, Consumer<T> take) {
		List<T> some;
		int page = 0;
		do {
			some = pages.apply(page++);
			some.forEach(take);
		}
		while (some.size() == PAGE);
	}

	private static Map<String, Object> row(Record answer) {
		Map<String, @Nullable Object> row = new LinkedHashMap<>();
		for (var part : answer.getClass().getRecordComponents()) {
			try {
				row.put(part.getName(), plain(part.getAccessor().invoke(answer)));
			}
			catch (ReflectiveOperationException ex) {
				throw new IllegalStateException("a record gives its parts", ex);
			}
		}
		return row;
	}

	private static Map<String, Object> row(KeptSoilTest test) {
		SoilFigures figures = test.figures();
		Map<String, @Nullable Object> row = new LinkedHashMap<>();
		row.put("id", test.id().toString());
		row.put("site", test.site().toString());
		row.put("planting", plain(test.planting()));
		row.put("day", test.day().toString());
		row.put("ph", figures.acidity());
		row.put("ec", figures.conductivity());
		row.put("extract", SiteAnswer.word(figures.extract()));
		row.put("sar", figures.sodiumRatio());
		row.put("esp", figures.sodiumPercent());
		row.put("cec", figures.exchange());
		row.put("depth", test.depthCentimetres());
		row.put("drainage", SiteAnswer.word(test.drainage()));
		row.put("note", test.note());
		return row;
	}

	private static @Nullable Object plain(@Nullable Object value) {
		return (value == null || value instanceof Number || value instanceof Boolean) ? value : value.toString();
	}

	@Override
	public void bring(PersonId person, Brought brought) {
		brought.each("sites", (row) -> {
			Site site = this.register.addSite(person,
					new SiteRequest(null, row.get("name"), row.get("county"), row.get("latitude"), row.get("longitude"),
							row.get("elevationMetres"), row.get("zone"), row.get("soil"), row.get("sun"),
							row.get("wind"), row.get("lie"), row.is("nearWall"), row.is("inTown"),
							row.get("measuredOffsetCelsius"), row.get("region"), row.is("irrigation"),
							row.is("volunteers"), row.get("litresPerMinute"))
						.toSite());
			brought.is(row, site.id());
		});
		brought.each("beds", (row) -> {
			Bed bed = this.beds.add(site(brought, row),
					new BedForm(row.get("name"), row.get("sun"), row.get("wind"), row.get("litresPerMinute")).toBed());
			brought.is(row, bed.id());
		});
		brought.each("plantings", (row) -> {
			Planting planting = this.register.addPlantings(site(brought, row),
					List.of(new PlantingRequest(row.get("species"), row.get("label"), row.get("count"),
							row.get("plantedOn"), row.get("placement"), row.is("wintersIndoors"), row.is("saltExposed"),
							row.get("squareMetres"), row.get("calliperMillimetres"), row.get("potLitres"),
							row.get("raisedIn"), row.get("lampMicromoles"), row.get("lampHours"),
							brought.here(row, "bed"))
						.toPlanting()))
				.get(0);
			brought.is(row, planting.id());
		});
		brought.each(
				"waterings", (
						row) -> this.waterings
							.bringBack(
									site(brought, row), new WateringRequest(row.get("day"), row.get("millimetres"),
											"mm", null, brought.here(row, "planting"), row.get("note"))
										.toWatering(),
									person));
		brought.each("soil-tests",
				(row) -> this.soilTests.keep(site(brought, row),
						new SoilTestForm(row.get("day"), brought.here(row, "planting"), row.get("ph"), row.get("ec"),
								row.get("extract"), row.get("sar"), row.get("esp"), row.get("cec"), row.get("depth"),
								row.get("drainage"), row.get("note"))
							.toTest(),
						person));
	}

	private static SiteId site(Brought brought, Brought.Row row) {
		String here = brought.here(row, "site");
		if (here == null) {
			throw new BadInput("site is missing", "site", "name the id of one of the sites");
		}
		return new SiteId(UUID.fromString(here));
	}

	@Override
	public void forget(PersonId person) {
		this.register.removeSitesOf(person);
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		this.register.handOver(from, into);
	}

}
