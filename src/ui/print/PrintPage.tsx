export default function PrintPage() {
  return null;
}
