#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Makes the films in this folder with the ffmpeg program; the results are kept so that no test needs it.
# Each lasts a few seconds at most and shows drawn rectangles only.
set -eu
cd "$(dirname "$0")"
quiet="-y -v error -threads 1"
x264="-c:v libx264 -pix_fmt yuv420p -bitexact -fflags +bitexact -flags:v +bitexact"

# 60 images at 60 images a second with B-frames (x264's default): the last one is shown at 59/60 s = 983.3 ms.
ffmpeg $quiet -f lavfi -i "color=black:size=64x48:rate=60,drawbox=x=0:y=0:w=16:h=16:color=red:t=fill" \
  -frames:v 60 $x264 b-frames.mp4
# The same in Matroska, which keeps whole milliseconds.
ffmpeg $quiet -i b-frames.mp4 -c copy -bitexact -fflags +bitexact b-frames.mkv

# 60 images at 30 a second, then 60 at 15: image n is shown at n/30 s up to 60, then at 2 + (n - 60)/15 s.
# Eight 8 x 8 fields along the top carry the image's number in binary, the lowest bit on the left.
code=""
bit=1
for field in 0 1 2 3 4 5 6 7; do
  code="$code,drawbox=x=$((field * 8)):y=0:w=8:h=8:color=white:t=fill:enable='mod(floor(n/$bit),2)'"
  bit=$((bit * 2))
done
ffmpeg $quiet -f lavfi -i "color=black:size=64x48:rate=30$code" -frames:v 120 \
  -vf "settb=1/30,setpts='if(lt(N,60),N,60+2*(N-60))'" -vsync passthrough -video_track_timescale 30000 \
  -g 25 $x264 variable-rate.mp4
ffmpeg $quiet -i variable-rate.mp4 -c copy -bitexact -fflags +bitexact variable-rate.mkv

# A red field in the stored picture's top left corner, and a note to turn it counter-clockwise by 0, 90, 180, 270
# degrees for showing.
for turn in 0 90 180 270; do
  ffmpeg $quiet -i b-frames.mp4 -frames:v 3 -c copy -metadata:s:v "rotate=$turn" -bitexact -fflags +bitexact \
    "turn-$turn.mp4"
done

# Sound alone, with and without a cover picture.
ffmpeg $quiet -f lavfi -i sine=duration=0.1 -c:a aac -b:a 16k -bitexact -fflags +bitexact sound-only.mp4
ffmpeg $quiet -f lavfi -i "color=blue:size=16x16" -frames:v 1 -bitexact cover.png
ffmpeg $quiet -i sound-only.mp4 -i cover.png -map 0 -map 1 -c copy -disposition:v attached_pic -bitexact \
  -fflags +bitexact sound-with-cover.m4a
rm cover.png

# Trimmed without coding anew: the file holds images before the first one that is shown; and a sound that goes on for
# longer than the picture.
ffmpeg $quiet -ss 0.5 -i b-frames.mp4 -f lavfi -i sine=duration=1.5 -map 0:v -map 1:a -c:v copy -c:a aac -b:a 16k \
  -bitexact -fflags +bitexact trimmed.mp4
ffmpeg $quiet -i b-frames.mp4 -f lavfi -i sine=duration=1.5 -map 0:v -map 1:a -c:v copy -c:a aac -b:a 16k -bitexact \
  -fflags +bitexact long-sound.mkv

# Cut off: an mp4 whose index was never written, and the first part of each kind that can be read as far as it goes.
cutTo() { head -c $(($(stat -c %s "$2") * $1 / 100)) "$2" > "$3"; }
cutTo 50 b-frames.mp4 cut-off.mp4
ffmpeg $quiet -f lavfi -i "testsrc=size=64x48:rate=30" -frames:v 60 -g 10 $x264 -crf 40 whole.mkv
cutTo 50 whole.mkv cut-off.mkv
ffmpeg $quiet -i whole.mkv -c copy -movflags faststart -bitexact -fflags +bitexact whole.mp4
cutTo 75 whole.mp4 cut-off-faststart.mp4
rm whole.mkv whole.mp4

# With the camera's own date.
ffmpeg $quiet -i turn-0.mp4 -c copy -metadata creation_time=2026-03-01T18:30:00Z -bitexact -fflags +bitexact dated.mp4
