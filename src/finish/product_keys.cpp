#include "finish/product_keys.h"

#include <array>

namespace coatday::finish {
namespace {

constexpr std::monostate own_reader;

// clang-format off
constexpr std::array of_product{
    ProductKey{"name", &Product::name, Range::usual, "what people call it"},
    ProductKey{"like", own_reader, Range::usual, "the product that it starts from; every other key overrides that product's"},
    ProductKey{"family", &Product::family, Range::usual, "its name in the rules of what goes over what; default: its own id"},
    ProductKey{"base", &Product::base, Range::usual, "what the finish is carried in"},
    ProductKey{"role", &Product::role, Range::usual, "what it is for"},
    ProductKey{"mechanism", own_reader, Range::usual, "how it dries and cures"},
    ProductKey{"film", &Product::film, Range::usual, "whether it adds to the film that resists moisture"},
    ProductKey{"reference air", own_reader, Range::usual, "the air in which the times hold; default: 23 °C 50 %"},
    ProductKey{"times", own_reader, Range::usual, "the stages of drying, from application"},
    ProductKey{"times at", own_reader, Range::usual, "further rows of the label, each in its own air"},
    ProductKey{"laws", own_reader, Range::usual, "how air changes the times, where the class of the product is wrong"},
    ProductKey{"limits", own_reader, Range::usual, "the air in which a coat may go on"},
    ProductKey{"coverage", own_reader, Range::usual, "how far it goes"},
    ProductKey{"two part", own_reader, Range::usual, "how base and hardener are mixed, by volume"},
    ProductKey{"pot life", &Product::pot_life, Range::above_zero, "how long a mix stays usable", "pot_life_h", "pot life"},
    ProductKey{"stand", &Product::stand, Range::above_zero, "how long it lies before it is wiped off", "", "wiped off after"},
    ProductKey{"voc", &Product::voc, Range::usual, "its content of volatile organic compounds", "voc_g_per_l", "VOC"},
    ProductKey{"flash class", &Product::flash, Range::usual, "its class by flash point"},
    ProductKey{"hazards", own_reader, Range::usual, "the dangers of which the plan warns"},
    ProductKey{"food contact when cured", &Product::food_contact_when_cured, Range::usual, "whether it may touch food when cured"},
    ProductKey{"cans", own_reader, Range::usual, "what can be bought"},
    ProductKey{"work rates", own_reader, Range::usual, "the methods that it can be put on with"},
    ProductKey{"set up", &Product::set_up, Range::usual, "mixing, straining, masking: once a session"},
    ProductKey{"clean up", &Product::clean_up, Range::usual, "cleaning of the tools: once a session"},
    ProductKey{"opened keeps", &Product::shelf_life_opened, Range::above_zero, "how long it keeps in an opened can"},
    ProductKey{"solvent", own_reader, Range::usual, "the solvent that stands for its vapour; default: by its base"},
    ProductKey{"times for wet film", own_reader, Range::usual, "the film that the times hold for; default: that of its own coverage"},
};

constexpr std::array of_limits{
    ProductKey{"coldest", &Limits::coldest, Range::usual, "the coldest air", "min_c"},
    ProductKey{"hottest", &Limits::hottest, Range::usual, "the hottest air", "max_c"},
    ProductKey{"dampest", &Limits::dampest, Range::usual, "the dampest air", "max_relative_humidity"},
    ProductKey{"above dew point", &Limits::dew_point_margin, Range::usual, "how far the air must be above its dew point",
               "dew_point_margin_k"},
    ProductKey{"hold", &Limits::hold, Range::usual, "how long after application it must stay warm", "hold_h"},
    ProductKey{"hold above", &Limits::hold_above, Range::usual, "how warm it must stay for so long", "hold_above_c"},
    ProductKey{"blush refused", &Limits::blush_margin, Range::usual, "air nearer its dew point than this is refused"},
    ProductKey{"blush warning", &Limits::blush_warning, Range::usual, "air nearer its dew point than this brings a warning"},
};

constexpr std::array of_coverage{
    ProductKey{"spreading rate", &Product::stated_spreading_rate, Range::usual, "the area that a litre covers; or give the next two"},
    ProductKey{"volume solids", &Product::volume_solids, Range::above_zero, "the share that stays as film"},
    ProductKey{"dry film", &Product::dry_film, Range::usual, "the dry film of a coat"},
    ProductKey{"thinner", &Product::thinner_share, Range::usual, "litres of thinner per litre"},
    ProductKey{"first coat factor", &Product::first_coat_factor, Range::factor, "bare wood takes so many times as much"},
    ProductKey{"end grain factor", &Product::end_grain_factor, Range::factor, "and its end grain so many times a face"},
};
// clang-format on

}  // namespace

std::span<const ProductKey> product_keys() { return of_product; }
std::span<const ProductKey> limit_keys() { return of_limits; }
std::span<const ProductKey> coverage_keys() { return of_coverage; }

}  // namespace coatday::finish
