using System.Collections.Immutable;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Nutrients;

/// <summary>A published way to turn a soil report into pounds of P2O5 and K2O per acre, with its edition and domain.</summary>
/// <remarks>A system never answers outside its domain: a crop row, extractant or unit it was not made for is left
/// unanswered, with the systems that would serve. Get one from <see cref="RecommendationSystems"/>.</remarks>
public abstract class RecommendationSystem
{
    private readonly SystemRecord record;

    private protected RecommendationSystem(SystemRecord record) => this.record = record;

    /// <summary>The systems to name where this one leaves a question unanswered, asked for only then.</summary>
    internal Func<ImmutableArray<RecommendationSystem>> Siblings { private get; init; } = () => [];

    /// <summary>Gets the id, such as <c>NC</c>.</summary>
    public string Id => record.Id;

    /// <summary>Gets the name.</summary>
    public string Name => record.Name;

    /// <summary>Gets the institution.</summary>
    public Institution Institution => record.Institution;

    /// <summary>Gets the year or edition.</summary>
    public string Edition => record.Edition;

    /// <summary>Gets what replaced this edition (a system's id or words), or null when it is current.</summary>
    public string? SupersededBy => record.SupersededBy;

    /// <summary>Gets the idea behind the system.</summary>
    public SystemPhilosophy Philosophy => record.Philosophy;

    /// <summary>Gets the idea in a sentence or two.</summary>
    public string InWords => record.InWords;

    /// <summary>Gets the standing of its numbers as a whole; a single answer may stand better.</summary>
    public DataStatus Status => record.Status;

    /// <summary>Gets the ids of its sources.</summary>
    public ImmutableArray<string> SourceIds => record.SourceIds;

    /// <summary>Gets the tests and crop rows it was made for.</summary>
    public ImmutableArray<AcceptedTest> Accepts => record.Accepts;

    /// <summary>Gets the shallowest sample it was made for.</summary>
    public Length ShallowestSample => record.ShallowestSample;

    /// <summary>Gets the deepest sample it was made for.</summary>
    public Length DeepestSample => record.DeepestSample;

    /// <summary>Whether the system has a crop row for a nutrient.</summary>
    /// <param name="crop">Crop row.</param>
    /// <param name="nutrient">Phosphate or potash.</param>
    /// <returns>True when it has.</returns>
    public bool Has(CropRow crop, PlantNutrient nutrient) => Accepts.Any(t => t.Nutrient == nutrient && t.Crops.Contains(crop));

    /// <summary>Answers for phosphate and potash.</summary>
    /// <param name="report">Soil report.</param>
    /// <param name="crop">Crop row, yield and use.</param>
    /// <param name="setting">What else is known of the soil; null for nothing.</param>
    /// <returns>The needs, and the nutrients left unanswered with the reason.</returns>
    /// <exception cref="ArgumentException">A subsoil reading that South Carolina cannot read.</exception>
    public NutrientRecommendation Recommend(SoilReport report, CropUse crop, PlotSetting? setting = null) =>
        Recommend(report, crop, setting, isAskedByName: true);

    /// <summary>Name and edition.</summary>
    /// <returns>Text such as <c>Tri-State 2020 (2020)</c>.</returns>
    public override string ToString() => $"{Name} ({Edition})";

    /// <summary>Answers; a system that was not asked by name keeps answers that rest on numbers from memory to itself.</summary>
    internal NutrientRecommendation Recommend(SoilReport report, CropUse crop, PlotSetting? setting, bool isAskedByName)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(crop);
        var question = new SystemQuestion(report, crop, setting ?? PlotSetting.Unknown);
        var answers = Accepts
            .Select(t => t.Nutrient)
            .Distinct()
            .Order()
            .Select(n => AnswerFor(n, question))
            .Append(new SystemAnswer([.. NeedsOfCrop(question)], null))
            .ToList();
        if (!isAskedByName)
        {
            answers =
            [
                .. answers.Select(a =>
                    a.Needs.FirstOrDefault(n => n.Status == DataStatus.Memory) is { } need
                        ? Refuse(
                            need.Nutrient,
                            question,
                            NutrientCodes.MemoryByName,
                            "its numbers are not yet checked against the publication, so it answers only when asked by name"
                        )
                        : a
                ),
            ];
        }

        ImmutableArray<NutrientNeed> needs = [.. answers.SelectMany(a => a.Needs).OrderBy(n => n.Nutrient)];
        ImmutableArray<UnansweredNutrient> unanswered = [.. answers.Select(a => a.Unanswered).OfType<UnansweredNutrient>()];
        return new NutrientRecommendation
        {
            System = this,
            Crop = crop,
            Needs = needs,
            Unanswered = unanswered,
            Findings = Finding.InOrder([
                .. needs.SelectMany(n => n.Findings),
                .. unanswered.Select(u => u.Finding),
                .. SystemRemarks.For(record, question, needs),
            ]),
        };
    }

    /// <summary>Whether the report holds a test of this nutrient that the system takes, for this crop row.</summary>
    internal bool WouldServe(SoilReport report, CropRow crop, PlantNutrient nutrient) =>
        Accepts.Any(t =>
            t.Nutrient == nutrient
            && t.Crops.Contains(crop)
            && ReportReadings.Find(report, t.Analyte, t.Extractants, t.Unit) is not null
        );

    /// <summary>Answers for a nutrient whose crop row and reading are inside the domain.</summary>
    private protected abstract SystemAnswer Answer(SystemQuestion question, DomainReading reading);

    /// <summary>What the system prints for the crop whatever the test.</summary>
    private protected virtual IEnumerable<NutrientNeed> NeedsOfCrop(SystemQuestion question) => [];

    private SystemAnswer AnswerFor(PlantNutrient nutrient, SystemQuestion question)
    {
        var tests = Accepts.Where(t => t.Nutrient == nutrient && t.Crops.Contains(question.Crop.Row)).ToList();
        if (tests.Count == 0)
        {
            return Refuse(
                nutrient,
                question,
                NutrientCodes.NoCropRow,
                $"it has no row for {CropRows.WordsFor(question.Crop.Row)}"
            );
        }

        foreach (var test in tests)
        {
            if (ReportReadings.Find(question.Report, test.Analyte, test.Extractants, test.Unit) is { } found)
            {
                return Answer(question, new DomainReading(nutrient, found.Reading, found.Value, test.Unit));
            }
        }

        var given = question.Report.FindAll(tests[0].Analyte);
        string wanted = string.Join(" or ", tests.Select(t => t.ToString()));
        return given.Length == 0
            ? Refuse(
                nutrient,
                question,
                NutrientCodes.TestMissing,
                $"the report holds no {SoilWords.For(tests[0].Analyte)}; it was made for {wanted}"
            )
            : Refuse(
                nutrient,
                question,
                NutrientCodes.TestNotAccepted,
                $"it was made for {wanted}, the report gives "
                    + $"{string.Join(" and ", given.Select(g => $"{SoilWords.For(g.Extractant)} in {SoilWords.For(g.Unit)}"))}"
            );
    }

    private protected SystemAnswer Refuse(
        PlantNutrient nutrient,
        SystemQuestion question,
        string code,
        string reason,
        NutrientRating? rating = null
    )
    {
        ImmutableArray<string> others =
        [
            .. Siblings().Where(s => s != this && s.WouldServe(question.Report, question.Crop.Row, nutrient)).Select(s => s.Id),
        ];
        return new SystemAnswer([], UnansweredNutrient.By(Name, nutrient, code, reason, others, rating));
    }
}
