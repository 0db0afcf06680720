export default function LegendPage() {
  return null;
}
