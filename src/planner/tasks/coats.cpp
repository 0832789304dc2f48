#include "planner/tasks/coats.h"

#include <algorithm>

namespace coatday::planner {

bool reaches(const finish::Step& step, const finish::Product* product, const job::FaceEntry& face, const piece::Face& shape,
             int film_coats_so_far) {
  if (step.faces == finish::StepFaces::show && !shape.show) return false;
  if (product == nullptr) return true;
  if (face.area <= SquareMetres(0)) return false;
  if (!face.exception) return true;
  if (face.exception->coats == 0) return false;
  return !product->film || film_coats_so_far < face.exception->coats;
}

std::vector<CoatOnFace> coats_on(const finish::Schedule& schedule, const finish::Catalogue& catalogue, const job::FaceEntry& face,
                                 const piece::Face& shape) {
  std::vector<CoatOnFace> coats;
  int film = 0;
  for (const finish::Step& step : schedule.steps) {
    const finish::Product* product = step.product ? catalogue.product(*step.product) : nullptr;
    if (product == nullptr || !reaches(step, product, face, shape, film)) continue;
    coats.push_back({&step, product});
    film += product->film ? 1 : 0;
  }
  return coats;
}

int film_coats(const std::vector<CoatOnFace>& coats) {
  return static_cast<int>(std::count_if(coats.begin(), coats.end(), [](const CoatOnFace& c) { return c.product->film; }));
}

}  // namespace coatday::planner
