package org.leafward.demo;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.measure.GeoPoint;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Raised;
import org.leafward.register.RaisedIn;
import org.leafward.register.SiteFeature;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;

import static org.leafward.demo.DemoPlanting.area;
import static org.leafward.demo.DemoPlanting.besideTheRoad;
import static org.leafward.demo.DemoPlanting.ground;
import static org.leafward.demo.DemoPlanting.pot;
import static org.leafward.demo.DemoPlanting.seedlings;
import static org.leafward.demo.DemoPlanting.potOf;
import static org.leafward.demo.DemoPlanting.trunk;

/**
 * The Kestrel Basin: three counties, four stations, four people, six sites. Places,
 * people and weather are invented; only the plants are real, and the state whose rules
 * hold at these coordinates.
 */
final class DemoRegion {

	static final long SEED = 19_710_423L;

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	private static final String STATE = "US-IA";

	private static final Raised WINDOW = new Raised(RaisedIn.MIDDAY_WINDOW, null, null);

	private static final Raised LAMPS = new Raised(RaisedIn.LAMPS, 150.0, 16.0);

	private static final Raised GLASS = new Raised(RaisedIn.GREENHOUSE, null, null);

	private DemoRegion() {
	}

	/**
	 * A station and its weather.
	 *
	 * @param station the station
	 * @param character what its weather is like
	 */
	record DemoStation(Station station, InventedWeather.Character character) {
	}

	/**
	 * Somebody and what they look after.
	 *
	 * @param name the name
	 * @param email an address that goes nowhere (RFC 2606)
	 * @param counties those that they serve as a specialist
	 * @param coordinates whether they plan workdays of a group
	 * @param sites their sites
	 */
	record DemoPerson(String name, String email, List<String> counties, boolean coordinates, List<DemoSite> sites) {
	}

	/**
	 * A site and what grows there.
	 *
	 * @param site the site
	 * @param plantings its plantings
	 */
	record DemoSite(NewSite site, List<NewPlanting> plantings) {
	}

	static ZoneId zone() {
		return ZONE;
	}

	static List<DemoStation> stations() {
		return List.of(
				station("ZZKBFERROWM", "Ferrow Mill", 42.06, -91.62, 214,
						new InventedWeather.Character(8.2, 14.0, 16, 1.24, 2.9)),
				station("ZZKBTAMSINR", "Tamsin Ridge", 42.31, -91.38, 402,
						new InventedWeather.Character(7.2, 13.6, 17, 0.96, 5.2)),
				station("ZZKBLARKMOO", "Larkmoor Field", 41.88, -91.21, 238,
						new InventedWeather.Character(8.5, 13.9, 16, 1.09, 4.4)),
				station("ZZKBQUILLHA", "Quill Harbor", 42.11, -90.97, 186,
						new InventedWeather.Character(9.4, 12.3, 25, 0.92, 4.9)));
	}

	private static DemoStation station(String id, String name, double latitude, double longitude, double elevation,
			InventedWeather.Character character) {
		return new DemoStation(new Station(new StationId(id), name, new GeoPoint(latitude, longitude, elevation), true),
				character);
	}

	/**
	 * The people with their sites.
	 * @param setOut the day in the coming May on which tender seedlings are to go out
	 * @return four people
	 */
	static List<DemoPerson> people(LocalDate setOut) {
		return List.of(
				new DemoPerson("Ines Farrow", "ines.farrow@example.org", List.of(), false,
						List.of(farrowHouse(setOut))),
				new DemoPerson("Tobias Wren", "tobias.wren@example.org", List.of(), true,
						List.of(millracePark(), tamsinLibrary())),
				new DemoPerson("Bram Ostrand", "bram.ostrand@example.org", List.of(), false,
						List.of(schoolGarden(setOut))),
				new DemoPerson("Odile Marsh", "odile.marsh@example.org", List.of("Merrow County", "Sable County"),
						false, List.of(harborPromenade(), demonstrationGarden(setOut))));
	}

	private static DemoSite farrowHouse(LocalDate setOut) {
		return new DemoSite(
				site("Farrow house", "Alder County", 42.08, -91.58, 231, SoilTexture.SILT_LOAM, Sun.PART_SHADE,
						Wind.AVERAGE, new Microclimate(Microclimate.Lie.HOLLOW, false, false, null)),
				List.of(area(9, ground("buxus-sempervirens", "hedge by the gate", 14, "2014-04-26")),
						area(4, ground("rhododendron-catawbiense", "porch rhododendrons", 3, "2018-05-12")),
						ground("taxus-x-media", "yew under the window", 2, "2009-09-20"),
						trunk(32, ground("acer-palmatum", "Japanese maple", 1, "2024-04-28")),
						ground("hydrangea-macrophylla", "blue hydrangeas", 4, "2017-06-03"),
						ground("syringa-vulgaris", "lilac", 1, "1998-05-01"),
						ground("rosa-hybrid-tea", "cutting roses", 6, "2019-04-30"),
						area(3, ground("allium-sativum", "garlic bed", 60, "2026-10-24")),
						seedlings("solanum-lycopersicum", "tomatoes", 8, setOut, WINDOW),
						potOf(30, pot("ficus-benjamina", "weeping fig", 1, "2020-02-11")),
						potOf(45, pot("citrus-x-limon", "lemon tree", 1, "2021-03-15"))));
	}

	private static DemoSite millracePark() {
		return new DemoSite(
				site("Millrace Park", "Alder County", 42.05, -91.66, 209, SoilTexture.LOAM, Sun.FULL_SUN, Wind.EXPOSED),
				List.of(trunk(560, ground("quercus-rubra", "red oaks on the green", 9, "1976-04-15")),
						ground("quercus-palustris", "pin oaks at the pond", 4, "1988-04-20"),
						trunk(820, ground("ulmus-americana", "old elm", 1, "1931-04-01")),
						trunk(52, ground("acer-x-freemanii", "young maples", 6, "2025-10-11")),
						ground("platanus-occidentalis", "sycamores", 5, "1990-04-10"),
						area(40, ground("thuja-occidentalis", "windbreak", 24, "2016-09-12")),
						ground("picea-pungens", "blue spruce", 3, "2001-05-05"),
						ground("spiraea-japonica", "spirea bed", 30, "2012-05-19"),
						ground("narcissus-hybrids", "daffodil slope", 400, "2015-10-17"),
						ground("malus-domestica", "heritage apples", 7, "2011-04-09")));
	}

	private static DemoSite tamsinLibrary() {
		return new DemoSite(
				site("Tamsin Library garden", "Merrow County", 42.3, -91.4, 388, SoilTexture.SANDY_LOAM, Sun.PART_SHADE,
						Wind.EXPOSED),
				List.of(area(5, ground("ilex-opaca", "hollies at the door", 2, "2013-05-11")),
						ground("pieris-japonica", "pieris", 5, "2019-05-18"),
						ground("kalmia-latifolia", "mountain laurel", 4, "2020-05-16"),
						ground("pinus-strobus", "white pine", 1, "1984-04-22"),
						ground("forsythia-x-intermedia", "forsythia", 3, "2006-04-29"),
						ground("hydrangea-paniculata", "panicle hydrangeas", 6, "2018-05-06"),
						ground("paeonia-lactiflora", "reading-bench peonies", 12, "1999-09-25"),
						ground("hosta-hybrids", "hosta border", 40, "2010-05-22"),
						trunk(30, ground("cercis-canadensis", "redbud", 1, "2024-10-05")),
						ground("tulipa-hybrids", "tulips", 200, "2026-10-31")));
	}

	private static DemoSite schoolGarden(LocalDate setOut) {
		return new DemoSite(
				site("Ridge Road school garden", "Merrow County", 42.27, -91.43, 351, SoilTexture.LOAM, Sun.FULL_SUN,
						Wind.AVERAGE),
				List.of(seedlings("solanum-lycopersicum", "class tomatoes", 24, setOut, LAMPS),
						seedlings("capsicum-annuum", "peppers", 18, setOut.plusDays(4), LAMPS),
						seedlings("cucurbita-pepo", "squash hills", 6, setOut.plusDays(4), WINDOW),
						seedlings("ocimum-basilicum", "basil", 20, setOut.plusDays(7), LAMPS),
						seedlings("tagetes-erecta", "marigold edging", 60, setOut, GLASS),
						area(12, ground("fragaria-x-ananassa", "strawberry bed", 50, "2025-04-27")),
						area(8, ground("vaccinium-corymbosum", "blueberries", 6, "2021-04-24")),
						ground("brassica-oleracea", "spring cabbage", 30, "2026-04-12"),
						ground("amelanchier-canadensis", "serviceberry", 2, "2022-10-08"),
						potOf(4, pot("chlorophytum-comosum", "classroom spider plants", 5, "2023-09-01"))));
	}

	private static DemoSite harborPromenade() {
		return new DemoSite(
				site("Quill Harbor promenade", "Sable County", 42.12, -90.98, 184, SoilTexture.SAND, Sun.FULL_SUN,
						Wind.EXPOSED, new Microclimate(Microclimate.Lie.FLAT, false, true, null)),
				List.of(area(60, besideTheRoad("juniperus-chinensis", "junipers along the road", 18, "2015-05-09")),
						trunk(380, besideTheRoad("acer-platanoides", "street maples", 11, "1994-04-18")),
						trunk(180, besideTheRoad("gleditsia-triacanthos-f-inermis", "honeylocusts", 8, "2008-04-26")),
						besideTheRoad("rosa-rugosa", "rugosa roses", 25, "2017-05-13"),
						area(15, besideTheRoad("euonymus-fortunei", "wintercreeper at the steps", 20, "2019-05-25")),
						ground("pinus-mugo", "mugo pines", 9, "2016-05-14"),
						ground("hibiscus-syriacus", "rose of Sharon", 4, "2020-05-23"),
						ground("canna-x-generalis", "canna beds", 45, "2026-05-24"),
						trunk(45, ground("betula-papyrifera", "paper birches", 3, "2024-04-20"))));
	}

	private static DemoSite demonstrationGarden(LocalDate setOut) {
		return new DemoSite(
				site("Larkmoor demonstration garden", "Sable County", 41.9, -91.18, 233, SoilTexture.CLAY_LOAM,
						Sun.FULL_SUN, Wind.SHELTERED),
				List.of(area(48, ground("buxus-microphylla", "knot garden", 120, "2012-04-21")),
						area(20, ground("rhododendron-maximum", "rosebay bank", 5, "2015-05-16")),
						ground("cornus-florida", "flowering dogwood", 2, "2023-04-29"),
						area(25, ground("tsuga-canadensis", "hemlock screen", 10, "2025-09-14")),
						ground("prunus-persica", "peach", 2, "2018-04-14"),
						ground("vitis-labrusca", "grape arbor", 4, "2014-04-19"),
						ground("dahlia-pinnata-hybrids", "dahlia row", 24, "2026-05-20"),
						ground("echinacea-purpurea", "coneflowers", 30, "2020-05-30"),
						ground("hydrangea-quercifolia", "oakleaf hydrangeas", 3, "2019-06-01"),
						seedlings("petunia-x-atkinsiana", "petunia trial", 90, setOut, GLASS),
						potOf(1.5, pot("phalaenopsis-hybrids", "moth orchids", 6, "2022-11-04"))));
	}

	private static NewSite site(String name, String county, double latitude, double longitude, double elevation,
			SoilTexture soil, Sun sun, Wind wind) {
		return site(name, county, latitude, longitude, elevation, soil, sun, wind, Microclimate.NONE);
	}

	private static NewSite site(String name, String county, double latitude, double longitude, double elevation,
			SoilTexture soil, Sun sun, Wind wind, Microclimate microclimate) {
		return new NewSite(name, county, new GeoPoint(latitude, longitude, elevation), ZONE, soil, sun, wind,
				microclimate, STATE, features(name), litresPerMinute(name));
	}

	private static @Nullable Double litresPerMinute(String site) {
		return switch (site) {
			case "Farrow house" -> 14.0;
			case "Millrace Park" -> 30.0;
			case "Ridge Road school garden" -> 12.0;
			case "Larkmoor demonstration garden" -> 18.0;
			default -> null;
		};
	}

	private static Set<SiteFeature> features(String site) {
		return switch (site) {
			case "Farrow house" -> Set.of(SiteFeature.IRRIGATION);
			case "Millrace Park", "Quill Harbor promenade" -> Set.of(SiteFeature.VOLUNTEERS);
			case "Larkmoor demonstration garden" -> Set.of(SiteFeature.IRRIGATION, SiteFeature.VOLUNTEERS);
			default -> Set.of();
		};
	}

}
