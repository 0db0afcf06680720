import { useApp } from '../context.ts';
import { ErrorPanel } from '../parts/ErrorPanel.tsx';
import { Amendments } from './Amendments.tsx';
import { BasisForm } from './BasisForm.tsx';
import { BuildingFacts } from './BuildingFacts.tsx';
import { Floors } from './Floors.tsx';
import { OtherBasis } from './OtherBasis.tsx';
import { ProjectTexts } from './ProjectTexts.tsx';
import { Spaces } from './Spaces.tsx';
import { Standards } from './Standards.tsx';
import { WeightsForm } from './WeightsForm.tsx';
import './project.css';

/** All that holds for the whole building: who and where, under which codes, and what the openings share. */
export default function ProjectPage() {
  const project = useApp((state) => state.document.project);
  const parts = [
    { name: 'Project', part: <ProjectTexts key={project.id} project={project} /> },
    { name: 'Code basis', part: <BasisForm project={project} /> },
    { name: 'The whole building', part: <BuildingFacts project={project} /> },
    { name: 'Floors', part: <Floors key={project.id} project={project} /> },
    { name: 'Spaces', part: <Spaces key={project.id} project={project} /> },
    { name: 'Local amendments', part: <Amendments key={project.id} project={project} /> },
    { name: 'Owner’s standards', part: <Standards key={project.id} project={project} /> },
    { name: 'Another basis, side by side', part: <OtherBasis key={project.id} project={project} /> },
    { name: 'Ranking weights', part: <WeightsForm project={project} /> },
  ];
  return (
    <div className="sheet">
      <div className="sheet-body stack stack-wide">
        <h1>{project.name}</h1>
        {parts.map(({ name, part }) => (
          <section key={name} className="section stack" aria-label={name}>
            <h2>{name}</h2>
            <ErrorPanel name={name}>{part}</ErrorPanel>
          </section>
        ))}
      </div>
    </div>
  );
}
