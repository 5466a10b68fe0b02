#!/bin/sh
# One folder of a bucket: copied here with rclone, filled, results and report copied back. REMOTE is what rclone
# knows the storage by; the reports of all folders can be joined. A task that failed is simply repeated.
#   sh bucket-task.sh REMOTE:archive 2024/03 REMOTE:computed REMOTE:reports
# As a Slurm array, with a line for each folder in folders.txt:
#   sbatch --array=1-100%20 --wrap 'sh bucket-task.sh REMOTE:archive \
#     "$(sed -n "${SLURM_ARRAY_TASK_ID}p" folders.txt)" REMOTE:computed REMOTE:reports'
set -eu
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
trap 'exit 143' TERM INT HUP
at_once=32
rclone copy "$1/$2" "$work/logs/$2" --transfers $at_once --checkers $at_once
# Code 1 says that something was refused, which the report tells.
(cd "$work/logs" && washbook fill "$2" --out "$work/computed" --quiet --report "$work/report.json") || [ $? -eq 1 ]
rclone copy "$work/computed" "$3/$2" --transfers $at_once --checkers $at_once
rclone copyto "$work/report.json" "$4/$(printf %s "$2" | tr / -).json"
