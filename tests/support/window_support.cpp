// SPDX-License-Identifier: GPL-3.0-or-later
// Carries the precompiled header of the tests that have a window.
