// How a lot was dyed: the keys of a lot that the dye bench asks for.
#pragma once

#include "records/recipe.h"
#include "source/fields.h"

namespace dyeleaf {

// Takes the recipe's keys out of a lot's fields; ids are not looked up yet.
Recipe read_recipe(Fields& lot);

} // namespace dyeleaf
