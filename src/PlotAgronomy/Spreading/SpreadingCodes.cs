namespace PlotAgronomy.Spreading;

/// <summary>The codes of this room's findings and questions, as its tables hold them.</summary>
internal static class SpreadingCodes
{
    internal const string Adjust = "spread-adjust";
    internal const string AskRun = "spread-ask-run";
    internal const string AskTime = "spread-ask-time";
    internal const string BetweenTrays = "spread-between-trays";
    internal const string CalibrateBlend = "spread-calibrate-blend";
    internal const string CarrierFeed = "spread-carrier-feed";
    internal const string CarrierUnfit = "spread-carrier-unfit";
    internal const string ChaffyApart = "spread-chaffy-apart";
    internal const string FarOff = "spread-far-off";
    internal const string FewRuns = "spread-few-runs";
    internal const string FieldWorse = "spread-field-worse";
    internal const string FirstPassOnEdge = "spread-first-pass-on-edge";
    internal const string FlowTooSmall = "spread-flow-too-small";
    internal const string GateAbove = "spread-gate-above";
    internal const string GateBelow = "spread-gate-below";
    internal const string GateFirstGuess = "spread-gate-first-guess";
    internal const string GateMoved = "spread-gate-moved";
    internal const string GateOneStepAbove = "spread-gate-one-step-above";
    internal const string GatePooled = "spread-gate-pooled";
    internal const string HopperEarly = "spread-hopper-early";
    internal const string HopperLate = "spread-hopper-late";
    internal const string HurriedPace = "spread-hurried-pace";
    internal const string Implausible = "spread-implausible";
    internal const string LapKeepsSwath = "spread-lap-keeps-swath";
    internal const string LapMisses = "spread-lap-misses";
    internal const string LapNoRoom = "spread-lap-no-room";
    internal const string LongWalk = "spread-long-walk";
    internal const string MixedHopper = "spread-mixed-hopper";
    internal const string NoCarrierNeeded = "spread-no-carrier-needed";
    internal const string NoSwath = "spread-no-swath";
    internal const string NoWeighedRun = "spread-no-weighed-run";
    internal const string OffTarget = "spread-off-target";
    internal const string OtherDirection = "spread-other-direction";
    internal const string OuterSwath = "spread-outer-swath";
    internal const string OutletOff = "spread-outlet-off";
    internal const string Outside = "spread-outside";
    internal const string PaceDiffers = "spread-pace-differs";
    internal const string PassMixedDepth = "spread-pass-mixed-depth";
    internal const string RecordSpread = "spread-record-spread";
    internal const string RunsDisagree = "spread-runs-disagree";
    internal const string SeedGone = "spread-seed-gone";
    internal const string SeedLeft = "spread-seed-left";
    internal const string SeparatePasses = "spread-separate-passes";
    internal const string SidesNeeded = "spread-sides-needed";
    internal const string SizeFromWeight = "spread-size-from-weight";
    internal const string Skewed = "spread-skewed";
    internal const string SownTwice = "spread-sown-twice";
    internal const string SpacingEvened = "spread-spacing-evened";
    internal const string SwathDiffers = "spread-swath-differs";
    internal const string TestRunMuch = "spread-test-run-much";
    internal const string ThrowUnlike = "spread-throw-unlike";
    internal const string TooFastAlone = "spread-too-fast-alone";
    internal const string TrayRecovery = "spread-tray-recovery";
}
