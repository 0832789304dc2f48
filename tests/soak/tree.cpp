#include "tests/soak/tree.h"

#include <yaml-cpp/yaml.h>

#include <algorithm>
#include <utility>

namespace coatday::soak {
namespace {

void emit(YAML::Emitter& out, const Tree& tree) {
  switch (tree.kind) {
    case Tree::Kind::text:
      out << tree.text;
      break;
    case Tree::Kind::map:
      out << YAML::BeginMap;
      for (const Tree& child : tree.children) {
        out << YAML::Key << child.key << YAML::Value;
        emit(out, child);
      }
      out << YAML::EndMap;
      break;
    case Tree::Kind::list:
      out << YAML::BeginSeq;
      for (const Tree& child : tree.children) emit(out, child);
      out << YAML::EndSeq;
      break;
  }
}

Tree from(const YAML::Node& node) {
  Tree tree = node.IsMap() ? map() : node.IsSequence() ? list() : text(node.IsScalar() ? node.Scalar() : "");
  for (const auto& entry : node) {
    if (node.IsMap()) set(tree, entry.first.Scalar(), from(entry.second));
    if (node.IsSequence()) tree.children.push_back(from(entry));
  }
  return tree;
}

}  // namespace

Tree text(std::string words) { return {Tree::Kind::text, "", std::move(words), {}}; }
Tree map() { return {Tree::Kind::map, "", "", {}}; }
Tree list(std::vector<Tree> items) { return {Tree::Kind::list, "", "", std::move(items)}; }

Tree list(const std::vector<std::string>& texts) {
  Tree all = list();
  for (const std::string& one : texts) all.children.push_back(text(one));
  return all;
}

Tree& set(Tree& map, const std::string& key, Tree value) {
  value.key = key;
  if (Tree* there = find(map, key)) return *there = std::move(value);
  return map.children.emplace_back(std::move(value));
}

Tree& set(Tree& map, const std::string& key, const std::string& value) { return set(map, key, text(value)); }

void remove(Tree& map, const std::string& key) {
  std::erase_if(map.children, [&key](const Tree& child) { return child.key == key; });
}

const Tree* find(const Tree& map, const std::string& key) {
  const auto found = std::find_if(map.children.begin(), map.children.end(), [&key](const Tree& child) { return child.key == key; });
  return found == map.children.end() ? nullptr : &*found;
}

Tree* find(Tree& map, const std::string& key) { return const_cast<Tree*>(find(std::as_const(map), key)); }

void each(Tree& tree, const std::function<void(Tree&)>& visit) {
  visit(tree);
  for (Tree& child : tree.children) each(child, visit);
}

void each(const Tree& tree, const std::function<void(const Tree&)>& visit) {
  visit(tree);
  for (const Tree& child : tree.children) each(child, visit);
}

std::string to_yaml(const Tree& tree) {
  YAML::Emitter out;
  emit(out, tree);
  return std::string(out.c_str()) + "\n";
}

Tree read_yaml(const std::filesystem::path& file) { return from(YAML::LoadFile(file)); }

}  // namespace coatday::soak
