// How a pinch of powder lands on damp wool: crisp dots, round edges, a veil between the dots, or drops that run.
#pragma once

namespace dyeleaf {

enum class SpeckleGrade { clean, soft, hazy, blotchy };

} // namespace dyeleaf
