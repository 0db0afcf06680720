export default function BuildingPage() {
  return null;
}
