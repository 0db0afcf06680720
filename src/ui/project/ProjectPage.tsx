export default function ProjectPage() {
  return null;
}
