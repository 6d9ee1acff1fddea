using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Records;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>For each blank of the sheet what was planned there, and how an answer becomes entries.</summary>
internal sealed class BlankReaders(PlotAnswers answers, FieldPlan field)
{
    private readonly PlotPlan plan = answers.Plan;

    private string Plot => plan.Plot.Name;

    /// <summary>Null where the blank asks what no plan can tell apart.</summary>
    internal BlankReader For(RecordBlank blank) =>
        blank.Topic switch
        {
            RecordTopic.Lime => Lime(Walk(blank, w => w.Lime is not null)),
            RecordTopic.Fertilizer => Fertilizer(Walk(blank, w => w.Lime is null && w.Seed is null)),
            RecordTopic.Seed => Seed(answers.Spreading.Value.Passes.First(p => p.Names == blank.Subject)),
            RecordTopic.Setting => Setting([Walk(blank, w => w.Seed is not null)]),
            RecordTopic.Rain => Rain(),
            RecordTopic.Dressing => new DressingReader(answers).For(blank.Subject!),
            _ => Stand(),
        };

    /// <summary>Several settings as one question, where there are many blanks.</summary>
    internal BlankReader Setting(ImmutableArray<PlannedWalk> walks)
    {
        string names = string.Join("; ", walks.Select(w => w.What));
        string told = string.Join("; ", walks.Select(TellSetting));
        string setting = $"Setting of {names}";
        return new()
        {
            Asks = $"Gate and pace, {names}",
            Planned = told,
            Example = "gate 5, 48 s for 100 ft",
            Day = plan.PlantingDate,
            Plot = Plot,
            AsPlanned = on => BlankReader.Note(Plot, on, $"{setting}: {told}"),
            Instead = (on, text) =>
                text.Contains("gate", StringComparison.OrdinalIgnoreCase)
                    ? [BlankReader.Note(Plot, on, $"{setting}: {text}")]
                    : throw new FormatException("say the gate, and the pace where it was timed: gate 5, 48 s for 100 ft"),
            IsSaidBy = e => e is NoteEntry { Note: { } note } && note.StartsWith(setting, StringComparison.Ordinal),
        };
    }

    private PlannedWalk Walk(RecordBlank blank, Func<PlannedWalk, bool> isOfSort) =>
        field.Walks.First(w => isOfSort(w) && w.What == blank.Subject);

    private BlankReader Lime(PlannedWalk walk)
    {
        var offer = answers.Lime.Told.Offer!;
        return Spread(
            walk,
            $"Lime spread, {walk.What}",
            plan.LimeDate,
            "18 bags 2026-04-10",
            (on, loads) =>
                new LimeEntry
                {
                    On = on,
                    Plot = Plot,
                    Material = offer.Item,
                    IsWorkedIn = LimePlacing.Of(plan) == LimePlacement.WorkedIn,
                    Loads = loads,
                },
            e => e is LimeEntry spread && spread.Material.Name == walk.What
        );
    }

    private BlankReader Fertilizer(PlannedWalk walk)
    {
        var product = answers.Fertilizer.Told.Purchase.Value.Lines.First(l => l.Product.Name == walk.What).Product;
        return Spread(
            walk,
            $"Fertilizer spread, {walk.What}",
            plan.PlantingDate,
            "3 bags 2026-09-10",
            (on, loads) =>
                new FertilizerEntry
                {
                    On = on,
                    Plot = Plot,
                    Product = product,
                    Loads = loads,
                },
            e => e is FertilizerEntry spread && spread.Product.Name == walk.What && !DressingReader.IsDressing(answers, spread)
        );
    }

    private BlankReader Spread(
        PlannedWalk walk,
        string asks,
        DateOnly? day,
        string example,
        Func<DateOnly, ImmutableArray<SpreadLoad>, BookEntry> entry,
        Func<BookEntry, bool> isSaidBy
    ) =>
        new()
        {
            Asks = asks,
            Planned = Planned(walk, day),
            Example = example,
            Day = day,
            Plot = Plot,
            AsPlanned = on => entry(on, [LoadOf(walk)]),
            Instead = (on, text) => [entry(on, TypedText.Loads(text, walk.Pass.PackageWeight))],
            IsSaidBy = isSaidBy,
        };

    private BlankReader Seed(SowingPass pass) =>
        new()
        {
            Asks = $"Seed sown, {pass.Names}",
            Planned =
                $"{string.Join(", ", pass.Kinds.Select(k => $"{k.Planned.Kind.ShortName} {Print(k.Weight.ToMass())}"))}"
                + On(plan.PlantingDate),
            Example = "1 lb left, or a weight a kind: oats 20 lb",
            Day = plan.PlantingDate,
            Plot = Plot,
            AsPlanned = on => SeedText.AsPlanned(plan, pass, on),
            Instead = (on, text) => [SeedText.Instead(plan, pass, on, text)],
            IsSaidBy = e =>
                e is SowingEntry sown
                && sown.Kinds.Select(k => k.Id).ToHashSet().SetEquals(pass.Kinds.Select(k => k.Planned.Kind.Id)),
        };

    private BlankReader Rain() =>
        new()
        {
            Asks = "First rain after sowing",
            Example = "0.8 in 2026-09-20",
            Plot = Plot,
            Instead = (on, text) => [RecordText.Rain(Plot, on, text)],
            IsSaidBy = e => e is RainEntry && e.On >= plan.PlantingDate,
        };

    private BlankReader Stand() =>
        new()
        {
            Asks = "Seedlings in each hoop, three to four weeks after sowing",
            Example = "crimson clover: 19 25 14; oats: 8 9 7 in 1 ft2 2026-10-05",
            Plot = Plot,
            Instead = (on, text) => RecordText.Counts(Plot, on, text),
            IsSaidBy = e => e is CountEntry && e.On > plan.PlantingDate,
        };

    private static string TellSetting(PlannedWalk walk) =>
        walk.Seed?.Run is { } run && walk.Pass.TimePer100Feet is { } time
            ? $"gate {Amounts.Print(run.Gate, 1)}, {Amounts.Print(time, "s", 0)} for 100 ft"
            : $"{Print(walk.Pass.TestRunCatch)} on the test run of {Amounts.Print(walk.Pass.TestRun, "ft", 0)}";

    private static SpreadLoad LoadOf(PlannedWalk walk)
    {
        double pounds = walk.Pass.Load.Pounds;
        return walk.Pass.PackageWeight is { } bag
            ? SpreadLoad.FromBags(pounds / bag.Pounds, bag)
            : SpreadLoad.FromWeight(walk.Pass.Load);
    }

    private static string Planned(PlannedWalk walk, DateOnly? day) => $"{Print(walk.Pass.Load)}{Bags(walk)}{On(day)}";

    private static string Bags(PlannedWalk walk) => LoadOf(walk).BagCount is { } bags ? $", {Amounts.Print(bags, 1)} bags" : "";

    private static string On(DateOnly? day) => day is { } known ? $", {FieldWriter.Of(known)}" : ", day not set";

    private static string Print(Mass mass) => Amounts.PrintForScale(mass);
}
