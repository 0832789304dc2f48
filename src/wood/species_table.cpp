#include "wood/species_table.h"

namespace coatday::wood {

// clang-format off
const std::array<Species, 96> species_table{{
    {"alder-red", "Alder, red", 0.00151, 0.00256, Pores::closed},
    {"apple", "Apple", 0.00205, 0.00376, Pores::closed},
    {"ash-black", "Ash, black", 0.00172, 0.00274, Pores::open},
    {"ash-oregon", "Ash, Oregon", 0.00141, 0.00285, Pores::open},
    {"ash-pumpkin", "Ash, pumpkin", 0.00126, 0.00219, Pores::open},
    {"ash-white", "Ash, white", 0.00169, 0.00274, Pores::open},
    {"ash-green", "Ash, green", 0.00169, 0.00274, Pores::open},
    {"aspen-quaking", "Aspen, quaking", 0.00119, 0.00234, Pores::closed},
    {"basswood-american", "Basswood, American", 0.00230, 0.00330, Pores::closed},
    {"beech-american", "Beech, American", 0.00190, 0.00431, Pores::closed},
    {"birch-paper", "Birch, paper", 0.00219, 0.00304, Pores::closed},
    {"birch-river", "Birch, river", 0.00162, 0.00327, Pores::closed},
    {"birch-yellow", "Birch, yellow", 0.00256, 0.00338, Pores::closed},
    {"birch-sweet", "Birch, sweet", 0.00256, 0.00338, Pores::closed},
    {"buckeye-yellow", "Buckeye, yellow", 0.00123, 0.00285, Pores::closed},
    {"butternut", "Butternut", 0.00116, 0.00223, Pores::open},
    {"catalpa-northern", "Catalpa, northern", 0.00085, 0.00169, Pores::open},
    {"cherry-black", "Cherry, black", 0.00126, 0.00248, Pores::closed},
    {"chestnut-american", "Chestnut, American", 0.00116, 0.00234, Pores::open},
    {"cottonwood-black", "Cottonwood, black", 0.00123, 0.00304, Pores::closed},
    {"cottonwood-eastern", "Cottonwood, eastern", 0.00133, 0.00327, Pores::closed},
    {"elm-american", "Elm, American", 0.00144, 0.00338, Pores::open},
    {"elm-rock", "Elm, rock", 0.00165, 0.00285, Pores::open},
    {"elm-slippery", "Elm, slippery", 0.00169, 0.00315, Pores::open},
    {"elm-winged", "Elm, winged", 0.00183, 0.00419, Pores::open},
    {"elm-cedar", "Elm, cedar", 0.00183, 0.00419, Pores::open},
    {"hackberry", "Hackberry", 0.00165, 0.00315, Pores::open},
    {"hickory-pecan", "Hickory, pecan", 0.00169, 0.00315, Pores::open},
    {"honeylocust", "Honeylocust", 0.00144, 0.00230, Pores::open},
    {"locust-black", "Locust, black", 0.00158, 0.00252, Pores::open},
    {"madrone-pacific", "Madrone, Pacific", 0.00194, 0.00451, Pores::closed},
    {"magnolia-cucumbertree", "Magnolia, cucumbertree", 0.00180, 0.00312, Pores::closed},
    {"magnolia-southern", "Magnolia, southern", 0.00187, 0.00230, Pores::closed},
    {"magnolia-sweetbay", "Magnolia, sweetbay", 0.00162, 0.00293, Pores::closed},
    {"maple-bigleaf", "Maple, bigleaf", 0.00126, 0.00248, Pores::closed},
    {"maple-red", "Maple, red", 0.00137, 0.00289, Pores::closed},
    {"maple-silver", "Maple, silver", 0.00102, 0.00252, Pores::closed},
    {"maple-black", "Maple, black", 0.00165, 0.00353, Pores::closed},
    {"maple-sugar", "Maple, sugar", 0.00165, 0.00353, Pores::closed},
    {"oak-black", "Oak, black", 0.00123, 0.00230, Pores::open},
    {"oak-red-commercial", "Oak, red, commercial", 0.00158, 0.00369, Pores::open},
    {"oak-red-california", "Oak, red, California", 0.00123, 0.00230, Pores::open},
    {"oak-red-water-laurel-willow", "Oak, red: water, laurel, willow", 0.00151, 0.00350, Pores::open},
    {"oak-white-commercial", "Oak, white, commercial", 0.00180, 0.00365, Pores::open},
    {"oak-white-live", "Oak, white, live", 0.00230, 0.00338, Pores::open},
    {"oak-white-oregon-white", "Oak, white, Oregon white", 0.00144, 0.00327, Pores::open},
    {"oak-white-overcup", "Oak, white, overcup", 0.00183, 0.00462, Pores::open},
    {"persimmon-common", "Persimmon, common", 0.00278, 0.00403, Pores::closed},
    {"sassafras", "Sassafras", 0.00137, 0.00216, Pores::open},
    {"sweetgum", "Sweetgum", 0.00183, 0.00365, Pores::closed},
    {"sycamore-american", "Sycamore, American", 0.00172, 0.00296, Pores::closed},
    {"tanoak", "Tanoak", 0.00169, 0.00423, Pores::closed},
    {"tupelo-black", "Tupelo, black", 0.00176, 0.00308, Pores::closed},
    {"tupelo-water", "Tupelo, water", 0.00144, 0.00267, Pores::closed},
    {"walnut-black", "Walnut, black", 0.00190, 0.00274, Pores::open},
    {"hickory-true", "Hickory, true", 0.00259, 0.00411, Pores::open},  // from memory
    {"holly-american", "Holly, American", 0.00165, 0.00353, Pores::closed},  // from memory
    {"willow-black", "Willow, black", 0.00112, 0.00308, Pores::closed},  // C_T from memory
    {"yellow-poplar", "Yellow-poplar", 0.00158, 0.00289, Pores::closed},  // from memory
    {"baldcypress", "Baldcypress", 0.00130, 0.00216, Pores::softwood},  // from memory
    {"cedar-yellow-alaska", "Cedar, yellow (Alaska)", 0.00095, 0.00208, Pores::softwood},  // from memory
    {"cedar-atlantic-white", "Cedar, Atlantic white", 0.00099, 0.00187, Pores::softwood},  // from memory
    {"cedar-eastern-redcedar", "Cedar, eastern redcedar", 0.00106, 0.00162, Pores::softwood},  // from memory
    {"cedar-incense", "Cedar, incense", 0.00112, 0.00180, Pores::softwood},  // from memory
    {"cedar-northern-white", "Cedar, northern white", 0.00101, 0.00229, Pores::softwood},  // from memory
    {"cedar-port-orford", "Cedar, Port-Orford", 0.00158, 0.00241, Pores::softwood},  // from memory
    {"cedar-western-redcedar", "Cedar, western redcedar", 0.00111, 0.00234, Pores::softwood},  // from memory
    {"douglas-fir-coast", "Douglas-fir, coast", 0.00165, 0.00267, Pores::softwood},  // from memory
    {"douglas-fir-interior-north", "Douglas-fir, interior north", 0.00130, 0.00241, Pores::softwood},  // from memory
    {"douglas-fir-interior-west", "Douglas-fir, interior west", 0.00165, 0.00263, Pores::softwood},  // from memory
    {"fir-balsam", "Fir, balsam", 0.00099, 0.00241, Pores::softwood},  // from memory
    {"fir-california-red", "Fir, California red", 0.00155, 0.00278, Pores::softwood},  // from memory
    {"fir-noble", "Fir, noble", 0.00148, 0.00293, Pores::softwood},  // from memory
    {"fir-pacific-silver", "Fir, Pacific silver", 0.00151, 0.00327, Pores::softwood},  // from memory
    {"fir-subalpine", "Fir, subalpine", 0.00088, 0.00259, Pores::softwood},  // from memory
    {"fir-white", "Fir, white", 0.00112, 0.00245, Pores::softwood},  // C_T from the worked example of eq. 13-2
    {"hemlock-eastern", "Hemlock, eastern", 0.00102, 0.00237, Pores::softwood},  // from memory
    {"hemlock-western", "Hemlock, western", 0.00144, 0.00274, Pores::softwood},  // from memory
    {"larch-western", "Larch, western", 0.00155, 0.00323, Pores::softwood},  // from memory
    {"pine-eastern-white", "Pine, eastern white", 0.00071, 0.00212, Pores::softwood},
    {"pine-loblolly", "Pine, loblolly", 0.00165, 0.00259, Pores::softwood},  // from memory
    {"pine-lodgepole", "Pine, lodgepole", 0.00148, 0.00234, Pores::softwood},  // from memory
    {"pine-longleaf", "Pine, longleaf", 0.00176, 0.00263, Pores::softwood},  // from memory
    {"pine-ponderosa", "Pine, ponderosa", 0.00133, 0.00216, Pores::softwood},  // from memory
    {"pine-red", "Pine, red", 0.00130, 0.00252, Pores::softwood},  // from memory
    {"pine-shortleaf", "Pine, shortleaf", 0.00158, 0.00271, Pores::softwood},  // from memory
    {"pine-slash", "Pine, slash", 0.00187, 0.00267, Pores::softwood},  // from memory
    {"pine-sugar", "Pine, sugar", 0.00099, 0.00194, Pores::softwood},  // from memory
    {"pine-western-white", "Pine, western white", 0.00141, 0.00259, Pores::softwood},  // from memory
    {"redwood-old-growth", "Redwood, old-growth", 0.00120, 0.00205, Pores::softwood},  // from memory
    {"redwood-young-growth", "Redwood, young-growth", 0.00101, 0.00229, Pores::softwood},  // from memory
    {"spruce-engelmann", "Spruce, Engelmann", 0.00130, 0.00248, Pores::softwood},  // from memory
    {"spruce-sitka", "Spruce, Sitka", 0.00148, 0.00263, Pores::softwood},  // from memory
    {"tamarack", "Tamarack", 0.00126, 0.00259, Pores::softwood},  // from memory
    {"mahogany-true", "Mahogany (true)", 0.00172, 0.00238, Pores::open},
    {"teak", "Teak", 0.00101, 0.00186, Pores::open},  // C_R from memory
}};
// clang-format on

}  // namespace coatday::wood
