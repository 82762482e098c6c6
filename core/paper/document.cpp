#include "core/paper/document.hpp"

namespace evenclaw {

Block::Block(const Block& other) = default;
Block::Block(Block&& other) noexcept = default;
Block& Block::operator=(const Block& other) = default;
Block& Block::operator=(Block&& other) noexcept = default;
Block::~Block() = default;

}  // namespace evenclaw
