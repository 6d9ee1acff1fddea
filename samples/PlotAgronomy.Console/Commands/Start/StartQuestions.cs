using System.Globalization;

namespace PlotAgronomy.Sample.Commands;

/// <summary>What is asked, in the order of what lies on the table: tape, report, the sowing, bags and tags, spreader.</summary>
internal static class StartQuestions
{
    private const string Tape = "THE PLOT";
    private const string Report = "THE SOIL REPORT";
    private const string Sowing = "THE SOWING";
    private const string Bags = "BAGS AND TAGS";
    private const string Spreader = "THE SPREADER";

    private static readonly (string Word, string Said)[] Methods =
    [
        ("tilled-and-packed", "on tilled ground, then rolled"),
        ("broadcast-then-rolled", "into a crop that is rolled down"),
        ("broadcast-then-mown", "into growth that is mown"),
        ("frost-seeded", "on frozen ground"),
        ("drilled", "with a drill"),
    ];

    internal static readonly IReadOnlyList<StartQuestion> All =
    [
        new("name", Tape, "", "What do you call the plot?")
        {
            Take = StartSides.Name,
            IsAsked = draft => draft.Words("plot.name") == PlanDraft.Unnamed,
            Understood = draft => draft.Words("plot.name")!.Replace(PlanDraft.NotMeasured, "", StringComparison.Ordinal),
        },
        new("place", Tape, "plot.place", "In which state or province?")
        {
            Take = (draft, answer) => draft.Put("plot.place", Place(answer)),
            Understood = draft => draft.Words("plot.place")!,
        },
        new("pace", Tape, "pace", "Paced, not taped? Then how long is a pace, such as 2.5 ft, or 100 ft in 40 paces?")
        {
            Take = StartSides.Pace,
            IsAsked = draft => !draft.IsMeasured,
            Understood = draft => $"a pace of {Amounts.Print(draft.Plan.Pace!.Step, "ft", 2)}",
        },
        new("sides", Tape, "", "Its sides in order, such as 182, 140, 175, 150; or its area, such as 0.42 ac.")
        {
            Take = StartSides.Size,
            IsAsked = draft => !draft.IsMeasured && !StartSides.WaitsForDiagonals(draft),
            Understood = StartSides.Understood,
            Leave = StartSides.Leave,
        },
        new("diagonals", Tape, "", "")
        {
            Take = StartSides.Diagonals,
            WordsFor = StartSides.AskDiagonals,
            IsAsked = StartSides.WaitsForDiagonals,
            Understood = StartSides.Understood,
            Leave = StartSides.Leave,
        },
        new("texture", Tape, "plot.texture", "Its soil by feel, such as sandy loam, silt loam, clay?")
        {
            Take = Choice("plot.texture", "plot", "texture"),
            Understood = draft => draft.Words("plot.texture")!,
        },
        new("drainage", Tape, "plot.drainage", $"How is it drained?  {StartWords.Numbered(Drainages)}")
        {
            Take = Choice("plot.drainage", "plot", "drainage"),
            Understood = draft => draft.Words("plot.drainage")!,
        },
        new(
            "stands",
            Tape,
            "plot.standsNow",
            $"What stands there now?  {StartWords.Numbered(StartWords.Of("standsNow", "cover"))}"
        )
        {
            Take = Choice("plot.standsNow.cover", "standsNow", "cover"),
            Understood = draft => draft.Words("plot.standsNow.cover")!.Replace('-', ' '),
        },
        new("before", Tape, "plot.grewBefore", "Which kind was sown there the season before?")
        {
            Take = Text("plot.grewBefore"),
            Understood = draft => draft.Plan.Plot.GrewBefore!.ShortName,
        },
        new("laboratory", Report, "soilReport.laboratory", "Which laboratory's report lies here? Enter: none.")
        {
            Take = Text("soilReport.laboratory"),
            Understood = draft => draft.Words("soilReport.laboratory")!,
        },
        new("strip", Report, "homePh", "A pH by strip or meter? Enter: none.")
        {
            Take = (draft, answer) => draft.Put("homePh.ph", StartWords.Number(answer)),
            IsAsked = draft => !HasReport(draft),
            Understood = draft => $"pH {draft.Find("homePh.ph")}, give or take half a point",
        },
        new("sampled", Report, "soilReport.sampled", "When was it sampled, such as Feb 2027?")
        {
            Take = Date("soilReport.sampled", plan => plan.Report?.SampledOn),
            IsAsked = HasReport,
            Understood = draft => Day(draft.Plan.Report!.SampledOn),
        },
        new(
            "figures",
            Report,
            "",
            "Its figures on one line, such as pH 5.6, buffer pH 6.4 SMP, CEC 8, P 20, K 110 ppm Mehlich-3."
        )
        {
            Take = StartFigures.Figures,
            IsAsked = draft => HasReport(draft) && !draft.Has("soilReport.waterPh") && !draft.Has("soilReport.readings"),
            Understood = StartFigures.Understood,
        },
        new("figure-units", Report, "", "")
        {
            Take = StartFigures.Unit,
            WordsFor = StartFigures.AskUnit,
            IsAsked = StartFigures.WaitsForUnit,
            Understood = StartFigures.Understood,
            Leave = StartFigures.LeaveUnit,
        },
        new("buffer", Report, "soilReport.buffer.name", $"Which buffer?  {StartWords.Numbered(StartWords.Of("buffer", "name"))}")
        {
            Take = Choice("soilReport.buffer.name", "buffer", "name"),
            IsAsked = draft => draft.Has("soilReport.buffer.ph"),
            Understood = draft => draft.Words("soilReport.buffer.name")!,
        },
        new(
            "printed-lime",
            Report,
            "soilReport.recommendation.lime",
            "The lime it asks for, all it says, such as 2 ton/ac to pH 6.5, 6 in deep; 0 for none."
        )
        {
            Take = StartReport.Lime,
            IsAsked = HasReport,
            Understood = StartReport.LimeUnderstood,
        },
        new(
            "printed-nutrients",
            Report,
            "soilReport.recommendation.nitrogen",
            "The fertilizer it asks for, N-P2O5-K2O, such as 60-40-80 for clover."
        )
        {
            Take = StartReport.Nutrients,
            IsAsked = HasReport,
            Understood = StartReport.NutrientsUnderstood,
        },
        new(
            "kinds",
            Sowing,
            "growing",
            "What will you sow, in pounds an acre as it lies in the bag? Such as winter wheat 40 lb, crimson clover 10 lb. "
                + "Enter: nothing, the stand is kept."
        )
        {
            Take = StartKinds.Kinds,
            IsAsked = draft => !StartKinds.WaitsForName(draft),
            Understood = StartKinds.Understood,
        },
        new("which-kind", Sowing, "", "")
        {
            Take = StartKinds.Named,
            WordsFor = StartKinds.AskName,
            IsAsked = StartKinds.WaitsForName,
            IsRepeated = true,
            Understood = StartKinds.Understood,
            Leave = StartKinds.LeaveName,
        },
        new("sowing-day", Sowing, "plantingDate", "On which day will you sow, such as Sep 12, 2027?")
        {
            Take = Date("plantingDate", plan => plan.PlantingDate),
            IsAsked = StartKinds.Any,
            Understood = draft => Day(draft.Plan.PlantingDate),
        },
        new("method", Sowing, "method", $"How?  {StartWords.Numbered(Methods.Select(m => m.Said))}")
        {
            Take = Method,
            IsAsked = StartKinds.Any,
            Understood = draft => Methods.First(m => m.Word == draft.Words("method")).Said,
        },
        new("tillage", Sowing, "tillageDepth", "How deep will you till, such as 5 in?")
        {
            Take = Text("tillageDepth"),
            IsAsked = draft =>
                draft.Words("method") is "tilled-and-packed" || (draft.Words("method") is null && StartKinds.Any(draft)),
            Understood = draft => Amounts.Print(draft.Plan.TillageDepth!.Value, "in", 1),
        },
        new("lime-day", Sowing, "limeDate", "By when can lime go on, such as Mar 2027?")
        {
            Take = Date("limeDate", plan => plan.LimeDate),
            IsAsked = NeedsLime,
            Understood = draft => Day(draft.Plan.LimeDate),
        },
        new(
            "seed",
            Bags,
            "",
            "Seed, a bag a line, such as crimson clover, 25 lb, $58, pure 98.5, germ 80, hard 8, tested 6/27. Enter ends."
        )
        {
            Take = StartBags.Seed,
            IsList = true,
            IsAsked = draft => StartKinds.WithoutBag(draft).Any(),
            Understood = StartBags.SeedUnderstood,
            Leave = StartBags.SeedDone,
        },
        new(
            "lime",
            Bags,
            "materials.lime",
            "Lime, a bag a line, such as pelletized lime, CCE 90, 40 lb, $6; if it is in your shed: have 3. Enter ends."
        )
        {
            Take = StartBags.Lime,
            IsList = true,
            IsAsked = NeedsLime,
            Understood = StartBags.LimeUnderstood,
        },
        new("fertilizer", Bags, "materials.fertilizers", "Fertilizer, a bag a line, such as 19-19-19, 50 lb, $24. Enter ends.")
        {
            Take = StartBags.Fertilizer,
            IsList = true,
            IsAsked = HasReport,
            Understood = StartBags.FertilizerUnderstood,
        },
        new(
            "spreader",
            Spreader,
            "spreader",
            "Your spreader and how wide it throws evenly, such as hand spreader, 10 ft? Enter: none."
        )
        {
            Take = StartBags.Spreader,
            Understood = draft => draft.Plan.Spreader!.ToString(),
        },
        new("hopper", Spreader, "spreader.hopper", "What does its hopper hold, such as 3 gal, or 25 lb of oats?")
        {
            Take = StartBags.Hopper,
            IsAsked = HasSpreader,
            Understood = draft => draft.Words("spreader.hopper")!,
        },
        new("runs", Spreader, "spreader.measuredRuns", "Weighed runs, such as oats, gate 4, 2.1 lb, 200 ft, 50 s. Enter ends.")
        {
            Take = StartBags.Run,
            IsList = true,
            IsAsked = HasSpreader,
            Understood = StartBags.RunUnderstood,
        },
    ];

    private static IEnumerable<string> Drainages =>
        StartWords.Of("plot", "drainage").Select(d => d.Replace(" drained", "", StringComparison.Ordinal));

    private static bool HasReport(PlanDraft draft) => draft.Has("soilReport");

    /// <summary>Lime is bought and dated where a reading asks for it and the laboratory does not say none.</summary>
    private static bool NeedsLime(PlanDraft draft) => (HasReport(draft) || draft.Has("homePh")) && StartReport.NeedsLime(draft);

    private static bool HasSpreader(PlanDraft draft) => draft.Has("spreader");

    private static Action<PlanDraft, string> Text(string place) => (draft, answer) => draft.Put(place, answer);

    /// <summary>A day as it is typed; once it is understood it is written so that it can be read in one way only.</summary>
    private static Action<PlanDraft, string> Date(string place, Func<PlotPlan, DateOnly?> read) =>
        (draft, answer) =>
        {
            draft.Put(place, answer);
            if (draft.Plan is { } plan && read(plan) is { } day)
            {
                draft.Put(place, day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            }
        };

    private static Action<PlanDraft, string> Choice(string place, string part, string field) =>
        (draft, answer) => draft.Put(place, StartWords.Chosen(answer, StartWords.Of(part, field)));

    private static void Method(PlanDraft draft, string answer)
    {
        string said = StartWords.Chosen(answer, [.. Methods.Select(m => m.Said)]);
        StartKinds.Method(draft, Methods.First(m => m.Said == said).Word);
    }

    /// <summary>A place by its name or by the two letters of its post.</summary>
    private static string Place(string answer)
    {
        var byLetters = PlotAgronomy
            .Place.All.Where(p => p.IsoCode.EndsWith($"-{answer}", StringComparison.OrdinalIgnoreCase))
            .ToList();
        return byLetters is [var one] ? one.Name : StartWords.Chosen(answer, StartWords.Of("plot", "place"));
    }

    private static string Day(DateOnly? day) => day?.ToString("d MMM yyyy", CultureInfo.InvariantCulture) ?? "";
}
