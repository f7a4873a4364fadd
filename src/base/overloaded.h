// Several lambdas as one visitor of a variant.
#pragma once

namespace dyeleaf {

template <class... Cases> struct Overloaded : Cases... { using Cases::operator()...; };
template <class... Cases> Overloaded(Cases...) -> Overloaded<Cases...>;

} // namespace dyeleaf
