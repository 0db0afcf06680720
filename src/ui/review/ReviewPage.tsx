export default function ReviewPage() {
  return null;
}
