export default function RulesPage() {
  return null;
}
