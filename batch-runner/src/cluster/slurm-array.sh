#!/bin/sh
#SBATCH --job-name=washbook
#SBATCH --array=1-8
#SBATCH --cpus-per-task=1
#SBATCH --mem=1G
# One part of an archive for each task of a Slurm array. Begin and, if part 3 failed, repeat it:
#   sbatch slurm-array.sh ARCHIVE COMPUTED REPORTS
#   sbatch --array=3 --export=ALL,PARTS=8 slurm-array.sh ARCHIVE COMPUTED REPORTS
# A part that is repeated alone has to know of how many it is one.
parts=${PARTS:-$SLURM_ARRAY_TASK_COUNT}
exec washbook fill "$1" --out "$2" --threads "${SLURM_CPUS_PER_TASK:-1}" --quiet \
  --shard "$SLURM_ARRAY_TASK_ID/$parts" --report "$3/part-$SLURM_ARRAY_TASK_ID.json"
