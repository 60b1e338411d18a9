package org.leafward.care.garden;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.leafward.care.core.rule.SiteFacts;
import org.leafward.register.SiteFeature;
import org.leafward.register.SoilTexture;

/** Twelve invented gardens, each for a part of the trade. */
final class Gardens {

	static final List<Garden> ALL = List
		.of(Garden.of("evergreens-and-borders", GardenClimate.COOL_INLAND, Garden.in("US-MI"), "2026-05-10", """
				buxus-sempervirens       | hedge by the gate  | 12 | 2015-04-20
				rhododendron-catawbiense | by the north wall  | 3  | 2014-09-10
				taxus-x-media            | yews at the door   | 4  | 2010-05-01
				quercus-rubra            | big oak            | 1  | 1980-01-01
				syringa-vulgaris         | lilac              | 1  | 2005-04-20
				hydrangea-macrophylla    | blue hydrangeas    | 3  | 2018-05-15
				rosa-hybrid-tea          | tea roses          | 5  | 2019-04-20
				""").with(Map.of(), Map.of("lilac bloom-end", LocalDate.of(2026, 6, 2))),
				Garden.of("frost-free-coast", GardenClimate.FROST_FREE_COAST,
						new SiteFacts("US-FL", "", SoilTexture.SAND, Set.of(SiteFeature.IRRIGATION)), "2026-03-15", """
								quercus-virginiana    | live oak        | 1 | 1990-01-01
								ilex-cornuta          | holly           | 3 | 2012-02-01
								lagerstroemia-indica  | crape myrtle    | 2 | 2010-02-01
								hydrangea-quercifolia | oakleaf         | 2 | 2018-02-01
								canna-x-generalis     | cannas          | 9 | 2020-03-01
								solanum-lycopersicum  | tomatoes        | 6 | 2026-03-01
								cynodon-dactylon      | lawn            | 1 | 2008-05-01
								"""),
				Garden.of("alpine", GardenClimate.ALPINE, Garden.in("US-CO"), "2026-06-20", """
						picea-pungens       | blue spruces   | 5  | 2000-06-01
						populus-tremuloides | aspens         | 7  | 2012-06-01
						dasiphora-fruticosa | potentillas    | 5  | 2015-06-01
						paeonia-lactiflora  | peonies        | 4  | 2017-08-25
						lactuca-sativa      | lettuce        | 20 | 2026-06-10
						pisum-sativum       | peas           | 40 | 2026-05-20
						fragaria-x-ananassa | strawberries   | 30 | 2023-06-01
						"""),
				Garden.of("cold-continental", GardenClimate.COLD_CONTINENTAL, Garden.in("US-MN"), "2026-10-12", """
						quercus-macrocarpa   | bur oak     | 1  | 1970-01-01
						thuja-occidentalis   | windbreak   | 30 | 2008-05-15
						malus-domestica      | apples      | 2  | 2012-05-01
						rubus-idaeus-primocane | raspberries | 15 | 2019-05-01
						rosa-floribunda-group | floribundas | 6 | 2020-05-10
						allium-sativum       | garlic      | 80 | 2026-10-08
						poa-pratensis        | lawn        | 1  | 2005-09-01
						"""),
				Garden.of("southern-tableland", GardenClimate.SOUTHERN_TABLELAND, Garden.in("AU-NSW"), "2026-11-02", """
						buxus-microphylla     | hedge          | 10 | 2014-09-20
						malus-domestica       | apples         | 3  | 2012-07-15
						acer-palmatum         | Japanese maple | 1  | 2016-08-01
						rhododendron-x-obtusum | azaleas       | 5  | 2015-04-10
						rosa-hybrid-tea       | roses          | 8  | 2018-07-10
						solanum-lycopersicum  | tomatoes       | 8  | 2026-11-10
						festuca-arundinacea   | lawn           | 1  | 2010-04-01
						"""),
				Garden.of("container-terrace", GardenClimate.ATLANTIC_COAST, Garden.in("US-NY"), "2026-07-18", """
						buxus-microphylla        | box in tubs     | 4  | 2021-04-15 | container
						acer-palmatum            | maple in a tub  | 1  | 2020-04-15 | container
						citrus-x-limon           | lemon           | 1  | 2019-05-01 | container, indoors-in-winter
						capsicum-annuum          | peppers in pots | 4  | 2026-05-12 | container
						petunia-x-atkinsiana     | petunias        | 12 | 2026-05-05 | container
						rosa-shrub-knock-out-type | roses in tubs  | 2  | 2022-04-20 | container
						""").with(Map.of("high-ahead", true), Map.of()),
				Garden.of("salted-roadside", GardenClimate.COOL_INLAND,
						new SiteFacts("US-WI", "Dane", SoilTexture.CLAY_LOAM, Set.of()), "2026-03-20", """
								pinus-strobus             | white pines     | 6 | 2005-05-01 | salt
								taxus-x-media             | low yews        | 8 | 2012-05-01 | salt
								malus-crabapple-cultivars | crabapples      | 3 | 2021-04-25 | salt
								festuca-arundinacea       | verge           | 1 | 2015-09-01 | salt
								acer-platanoides          | street maples   | 4 | 2022-10-20 | salt
								"""),
				Garden.of("kitchen-garden", GardenClimate.PLAINS, Garden.in("US-IA"), "2026-05-18", """
						solanum-lycopersicum      | tomatoes     | 12 | 2026-05-18
						brassica-oleracea-italica | broccoli     | 10 | 2026-04-12
						lactuca-sativa            | lettuce      | 30 | 2026-04-18
						pisum-sativum             | peas         | 60 | 2026-04-02
						zea-mays                  | sweet corn   | 80 | 2026-05-10
						cucurbita-maxima          | pumpkins     | 4  | 2026-05-20
						ocimum-basilicum          | basil        | 6  | 2026-05-24
						allium-sativum            | garlic       | 60 | 2025-10-15
						asparagus-officinalis     | asparagus    | 20 | 2018-04-20
						fragaria-x-ananassa       | strawberries | 40 | 2024-04-20
						vitis-labrusca            | grapes       | 4  | 2015-04-20
						"""),
				Garden.of("lawn-with-trees", GardenClimate.PIEDMONT,
						new SiteFacts("US-VA", "", SoilTexture.CLAY, Set.of(SiteFeature.IRRIGATION)), "2026-08-05", """
								festuca-arundinacea | front lawn      | 1 | 2012-09-15
								zoysia-japonica     | back lawn       | 1 | 2014-06-01
								acer-saccharum      | sugar maple     | 1 | 1995-03-01
								ulmus-americana     | elm             | 1 | 1990-03-01
								betula-nigra        | river birch     | 1 | 2008-03-01
								cornus-florida      | dogwood         | 2 | 2010-03-01
								magnolia-grandiflora | magnolia       | 1 | 2003-03-01
								""")
					.with(Map.of("root-zone-moist", true, "drought", false, "rain-week", true, "high-ahead", true,
							"hot-dry-wind", true), Map.of()),
				Garden.of("houseplants", GardenClimate.ATLANTIC_COAST, Garden.in("US-NY"), "2026-09-20", """
						ficus-benjamina       | fig in the hall   | 1 | 2015-01-01 | container, indoors-in-winter
						phalaenopsis-hybrids  | moth orchids      | 3 | 2021-01-01 | container, indoors-in-winter
						schlumbergera-x-buckleyi | holiday cactus | 2 | 2018-01-01 | container, indoors-in-winter
						crassula-ovata        | jade plant        | 1 | 2016-01-01 | container, indoors-in-winter
						citrus-x-microcarpa   | calamondin        | 1 | 2019-01-01 | container, indoors-in-winter
						nerium-oleander       | oleander          | 1 | 2017-01-01 | container, indoors-in-winter
						""").with(Map.of("low-ahead", false), Map.of()),
				Garden
					.of("volunteers-park", GardenClimate.COOL_INLAND,
							new SiteFacts("US-IL", "Cook", SoilTexture.SILT_LOAM,
									Set.of(SiteFeature.VOLUNTEERS, SiteFeature.IRRIGATION)),
							"2026-06-24", """
									quercus-alba          | white oak by the pond | 1  | 1930-01-01
									cercis-canadensis     | redbuds               | 4  | 2012-04-20
									forsythia-x-intermedia | forsythia bank       | 9  | 2005-04-20
									hosta-hybrids         | shade bed             | 40 | 2016-04-20
									miscanthus-sinensis   | tall grasses          | 12 | 2014-04-20
									tilia-cordata         | lindens               | 6  | 1998-04-20
									""")
					.with(Map.of("heat-index", true),
							Map.of("oak-wound", LocalDate.of(2026, 6, 23), "spring-freeze", LocalDate.of(2026, 5, 12),
									"canopy-loss", LocalDate.of(2026, 6, 20), "redbuds bud-break",
									LocalDate.of(2026, 4, 29))),
				Garden.of("newly-planted", GardenClimate.PIEDMONT, Garden.in("US-VA"), "2026-04-01", """
						acer-rubrum         | red maple      | 1  | 2026-03-25
						quercus-phellos     | willow oak     | 1  | 2025-11-20
						ilex-opaca          | holly          | 3  | 2026-09-15
						thuja-occidentalis  | screen         | 12 | 2024-10-01
						narcissus-hybrids   | daffodils      | 50 | 2026-11-01
						prunus-persica      | peaches        | 2  | 2026-03-10
						echinacea-purpurea  | coneflowers    | 9  | 2026-09-20
						poa-pratensis       | new lawn       | 1  | 2026-09-05
						"""));

	private Gardens() {
	}

	static Garden named(String name) {
		return ALL.stream().filter((garden) -> garden.name().equals(name)).findFirst().orElseThrow();
	}

}
