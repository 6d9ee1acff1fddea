using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Records;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>For each blank of the sheet what was planned there, and how an answer becomes entries.</summary>
internal sealed class BlankReaders(PlotAnswers answers, FieldPlan field)
{
    private const string SettingOf = "Setting of";

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
            _ => Stand(),
        };

    /// <summary>Several settings as one question, where there are many blanks.</summary>
    internal BlankReader Setting(ImmutableArray<PlannedWalk> walks)
    {
        string names = string.Join("; ", walks.Select(w => w.What));
        string told = string.Join("; ", walks.Select(TellSetting));
        return new()
        {
            Asks = $"Gate and pace, {names}",
            Planned = told,
            Example = "gate 5, 48 s for 100 ft",
            Day = plan.PlantingDate,
            Plot = Plot,
            AsPlanned = on => BlankReader.Note(Plot, on, $"{SettingOf} {names}: {told}"),
            Instead = (on, text) =>
                text.Contains("gate", StringComparison.OrdinalIgnoreCase)
                    ? [BlankReader.Note(Plot, on, $"{SettingOf} {names}: {text}")]
                    : throw new FormatException("say the gate, and the pace where it was timed: gate 5, 48 s for 100 ft"),
            IsAnsweredBy = e => IsNote(e, $"{SettingOf} {names}", $"Gate and pace, {names}"),
        };
    }

    private PlannedWalk Walk(RecordBlank blank, Func<PlannedWalk, bool> isOfSort) =>
        field.Walks.First(w => isOfSort(w) && w.What == blank.Subject);

    private BlankReader Lime(PlannedWalk walk)
    {
        var offer = answers.Lime.Told.Offer!;
        LimeEntry Entry(DateOnly on, ImmutableArray<SpreadLoad> loads) =>
            new()
            {
                On = on,
                Plot = Plot,
                Material = offer.Item,
                IsWorkedIn = LimePlacing.Of(plan) == LimePlacement.WorkedIn,
                Loads = loads,
            };
        return new()
        {
            Asks = $"Lime spread, {walk.What}",
            Planned = Planned(walk, plan.LimeDate),
            Example = "18 bags 2026-04-10",
            Day = plan.LimeDate,
            Plot = Plot,
            AsPlanned = on => Entry(on, [LoadOf(walk)]),
            Instead = (on, text) => [Entry(on, TypedText.Loads(text, walk.Pass.PackageWeight))],
            IsAnsweredBy = e =>
                e is LimeEntry spread && spread.Material.Name == walk.What || IsNote(e, "", $"Lime spread, {walk.What}"),
        };
    }

    private BlankReader Fertilizer(PlannedWalk walk)
    {
        var product = answers.Fertilizer.Told.Purchase.Value.Lines.First(l => l.Product.Name == walk.What).Product;
        FertilizerEntry Entry(DateOnly on, ImmutableArray<SpreadLoad> loads) =>
            new()
            {
                On = on,
                Plot = Plot,
                Product = product,
                Loads = loads,
            };
        return new()
        {
            Asks = $"Fertilizer spread, {walk.What}",
            Planned = Planned(walk, plan.PlantingDate),
            Example = "3 bags 2026-09-10",
            Day = plan.PlantingDate,
            Plot = Plot,
            AsPlanned = on => Entry(on, [LoadOf(walk)]),
            Instead = (on, text) => [Entry(on, TypedText.Loads(text, walk.Pass.PackageWeight))],
            IsAnsweredBy = e =>
                e is FertilizerEntry spread && spread.Product.Name == walk.What
                || IsNote(e, "", $"Fertilizer spread, {walk.What}"),
        };
    }

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
            IsAnsweredBy = e =>
                e is SowingEntry sown
                    && sown.Kinds.Select(k => k.Id).ToHashSet().SetEquals(pass.Kinds.Select(k => k.Planned.Kind.Id))
                || IsNote(e, "", $"Seed sown, {pass.Names}"),
        };

    private BlankReader Rain() =>
        new()
        {
            Asks = "First rain after sowing",
            Example = "0.8 in 2026-09-20",
            Plot = Plot,
            Instead = (on, text) => [RecordText.Rain(Plot, on, text)],
            IsAnsweredBy = e => e is RainEntry && e.On >= plan.PlantingDate || IsNote(e, "", "First rain after sowing"),
        };

    private BlankReader Stand() =>
        new()
        {
            Asks = "Seedlings in each hoop, three to four weeks after sowing",
            Example = "crimson clover: 19 25 14; oats: 8 9 7 in 1 ft2 2026-10-05",
            Plot = Plot,
            Instead = (on, text) => RecordText.Counts(Plot, on, text),
            IsAnsweredBy = e =>
                e is CountEntry && e.On > plan.PlantingDate
                || IsNote(e, "", "Seedlings in each hoop, three to four weeks after sowing"),
        };

    private static bool IsNote(BookEntry entry, string start, string asked) =>
        entry is NoteEntry { Note: { } note }
        && ((start.Length > 0 && note.StartsWith(start, StringComparison.Ordinal)) || note == $"{BlankReader.NotDone} {asked}");

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
