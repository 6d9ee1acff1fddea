using System.Collections.Immutable;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.Planning;

/// <summary>The parts of the answer on spreading (setting, walk, hopper), each given, not needed or open.</summary>
internal static class SpreadingParts
{
    internal static Answer<SpreaderSetting> Setting(SpreaderSetup setup, string kinds) =>
        setup switch
        {
            { PaceForGate: { } setting } => Answers.Given(setting, () => setting.Findings),
            { Taken.Run: { } untimed } => Answers.Open<SpreaderSetting>(() => [SpreadingQuestions.Time(untimed)]),
            _ => Answers.Open<SpreaderSetting>(() => [SpreadingQuestions.Run(kinds)]),
        };

    internal static Answer<FieldPasses> Laid(FieldPasses? layout) =>
        layout is not null
            ? Answers.Given(layout, () => layout.Findings)
            : Answers.Open<FieldPasses>(() => [LandQuestions.Outline()]);

    internal static Answer<MixedHopper> AllInOneHopper(PlotPlan plan, PlannedSpreader spreader, ImmutableArray<SownKind> sown)
    {
        if (sown.Length < 2)
        {
            return Answers.NoneNeeded<MixedHopper>();
        }

        var atOneGate = spreader
            .Runs.Where(r => r.Time is not null)
            .GroupAlike((one, other) => one.Gate == other.Gate)
            .Find(HasEvery);
        if (atOneGate is null)
        {
            string kinds = string.Join(", ", sown.Select(s => s.Planned.Kind.ShortName));
            return Answers.Open<MixedHopper>(() => [SpreadingQuestions.Run(kinds)]);
        }

        var mixed = MixedHopper.Bounds(
            [.. sown.Select(s => Share(s, atOneGate.First(r => r.Kind == s.Planned.Kind), spreader))],
            plan.Plot.Area,
            WalkingPace.Usual,
            spreader.Swath
        );
        return Answers.Given(mixed, () => mixed.Findings);

        bool HasEvery(IEnumerable<SpreaderRun> runs) => sown.All(s => runs.Any(r => r.Kind == s.Planned.Kind));
    }

    private static HopperShare Share(SownKind sown, SpreaderRun run, PlannedSpreader spreader) =>
        HopperShare.FromFlow(
            PassKind(sown),
            sown.Weight.ToMass(),
            new MeasuredRun(run, spreader.Swath).Rate.Flow!.Value,
            sown.Planned.Offer.Item.PureLiveSeedPart()
        );

    internal static Seeds.PassKind PassKind(SownKind sown) =>
        Seeds.PassKind.FromKind(sown.Planned.Kind, sown.Part.Component.SeedsPerPound);
}
