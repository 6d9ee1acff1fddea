using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>A published way to turn a soil report into pounds of P2O5 and K2O per acre, with its edition and domain.</summary>
/// <remarks>A system never answers outside its domain: a crop row, extractant or unit it was not made for is left
/// unanswered, with the systems that would serve. Get one from <see cref="RecommendationSystem"/>.</remarks>
/// <example>
/// <code>
/// var report = new SoilReport
/// {
///     Laboratory = "state laboratory",
///     SoilClass = SoilClass.Mineral,
///     SampledDepth = Length.FromInches(8),
///     Readings =
///     [
///         SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 45, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3),
///     ],
/// };
/// var need = RecommendationSystem.NorthCarolina.Recommend(report, CropUse.Browsed(CropRow.DeerTurkeyPlot));
/// Console.WriteLine(Amounts.Print(need.Phosphate!.Rate, "lb/ac", 0));
/// // 50 lb/ac
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public abstract partial class RecommendationSystem
{
    /// <summary>One test of each nutrient it answers for.</summary>
    private readonly ImmutableArray<AcceptedTest> answered;

    private protected RecommendationSystem(SystemRecord record)
    {
        Record = record;
        answered =
        [
            .. record
                .Accepts.GroupAlike((one, other) => one.Nutrient == other.Nutrient)
                .Select(alike => alike[0])
                .OrderBy(test => (int)test.Nutrient),
        ];
    }

    /// <summary>All systems: those to name where this one leaves a question unanswered, and the next editions.</summary>
    internal Func<ImmutableArray<RecommendationSystem>> Siblings { get; init; } = () => [];

    /// <summary>Gets the id, such as <c>NC</c>.</summary>
    public string Id => Record.Id;

    /// <summary>Gets the name.</summary>
    public string Name => Record.Name;

    /// <summary>Gets the institution.</summary>
    public Institution Institution => Record.Institution;

    /// <summary>Gets the year or edition.</summary>
    public string Edition => Record.Edition;

    /// <summary>Gets the idea behind the system.</summary>
    internal SystemPhilosophy Philosophy => Record.Philosophy;

    /// <summary>Gets the idea in a sentence or two.</summary>
    public string InWords => Record.InWords;

    /// <summary>Gets the standing of its numbers as a whole; a single answer may stand better.</summary>
    public DataStatus Status => Record.Status;

    /// <summary>Gets its sources.</summary>
    public ImmutableArray<Source> Sources => Record.Sources;

    /// <summary>Gets the tests and crop rows it was made for.</summary>
    public ImmutableArray<AcceptedTest> Accepts => Record.Accepts;

    /// <summary>Gets the shallowest sample it was made for.</summary>
    public Length ShallowestSample => Length.FromInches(Record.DepthLowInches);

    /// <summary>Gets the deepest sample it was made for.</summary>
    public Length DeepestSample => Length.FromInches(Record.DepthHighInches);

    /// <summary>What the table says of it.</summary>
    internal SystemRecord Record { get; }

    /// <summary>Whether the system has a crop row for a nutrient.</summary>
    /// <param name="crop">Crop row.</param>
    /// <param name="nutrient">Phosphate or potash.</param>
    /// <returns>True when it has.</returns>
    public bool Has(CropRow crop, PlantNutrient nutrient) => FirstTest(nutrient, crop) is not null;

    /// <summary>Answers for phosphate and potash.</summary>
    /// <param name="soil">Soil; a report will do.</param>
    /// <param name="crop">Crop row, yield and use.</param>
    /// <returns>The needs, and the nutrients left unanswered with the reason.</returns>
    /// <exception cref="ArgumentException">A subsoil reading that South Carolina cannot read.</exception>
    public NutrientRecommendation Recommend(PlotSoil soil, CropUse crop) => Recommend(soil, crop, isAskedByName: true);

    /// <summary>Name and edition.</summary>
    /// <returns>Text such as <c>Tri-State 2020 (2020)</c>.</returns>
    public override string ToString() => $"{Name} ({Edition})";

    /// <summary>Answers; a system that was not asked by name keeps answers that rest on numbers from memory to itself.</summary>
    internal NutrientRecommendation Recommend(PlotSoil soil, CropUse crop, bool isAskedByName)
    {
        ArgumentNullException.ThrowIfNull(soil);
        ArgumentNullException.ThrowIfNull(crop);
        var question = new SystemRequest(Record, soil, crop);
        var first = AnswerFor(answered[0].Nutrient, question, isAskedByName);
        var second = answered.Length > 1 ? AnswerFor(answered[1].Nutrient, question, isAskedByName) : default;
        return new NutrientRecommendation(
            this,
            question,
            NeedOfCrop(question),
            first,
            second
        );
    }

    private SystemAnswer AnswerFor(PlantNutrient nutrient, SystemRequest question, bool isAskedByName)
    {
        var answer = AnswerFor(nutrient, question);
        return !isAskedByName && answer.Need is { Status: DataStatus.Memory }
            ? Refuse(nutrient, question, NutrientCodes.MemoryByName, FromMemory)
            : answer;
    }

    /// <summary>Whether the report holds a test of this nutrient that the system takes, for this crop row.</summary>
    internal bool WouldServe(PlotSoil soil, CropRow crop, PlantNutrient nutrient) =>
        (Record.TakesOrganicSoil || !SystemRequest.IsOrganic(soil))
        && Accepts.Any(t =>
            t.Nutrient == nutrient
            && t.Crops.Contains(crop)
            && ReportReadings.Find(soil.Report, t.Analyte, t.Extractants, t.Unit) is not null
        );

    /// <summary>Answers for a nutrient whose crop row and reading are inside the domain.</summary>
    private protected abstract SystemAnswer Answer(SystemRequest question, DomainReading reading);

    /// <summary>Hands out the sum for a nutrient it answers for, made ready for this crop, soil and test; the value of the
    /// reading is not looked at.</summary>
    internal abstract T UseKernel<T>(SystemRequest question, DomainReading reading, INeedKernelUser<T> user);

    /// <summary>The nitrogen the system prints for the crop whatever the test; null for none.</summary>
    private protected virtual NutrientNeed? NeedOfCrop(SystemRequest question) => null;

    private protected UnansweredNutrient Refuse(
        PlantNutrient nutrient,
        SystemRequest question,
        string code,
        Func<UnansweredNutrient, string> reason,
        bool isRated = false
    ) => new(this, question, nutrient, code, reason, isRated);

    /// <summary>The rating of a reading that it refuses a rate for; null where it rates none.</summary>
    private protected virtual NutrientRating? RatingOf(SystemRequest question, DomainReading reading) => null;

    internal NutrientRating? RatingOf(SystemRequest question, PlantNutrient nutrient) =>
        ReadingFor(nutrient, question) is { } reading ? RatingOf(question, reading) : null;

    private protected UnansweredNutrient AskFor(
        PlantNutrient nutrient,
        SystemRequest question,
        Func<UnansweredNutrient, string> fact
    ) => Refuse(nutrient, question, NutrientCodes.FactMissing, fact);

    private static string FromMemory(UnansweredNutrient refused) =>
        "its numbers are not yet checked against the publication, so it answers only when asked by name";

    /// <summary>The answer by what the laboratory printed in words, where the report holds no reading; null for none.</summary>
    private protected virtual SystemAnswer? AnswerWithoutReading(PlantNutrient nutrient, SystemRequest question) => null;

    private SystemAnswer AnswerFor(PlantNutrient nutrient, SystemRequest question)
    {
        if (!Record.TakesOrganicSoil && SystemRequest.IsOrganic(question.Soil))
        {
            return Refuse(nutrient, question, NutrientCodes.OrganicSoil, _ =>
                "it was made for mineral soil, and this one is muck or peat"
            );
        }

        return ReadingFor(nutrient, question) is { } reading
            ? Answer(question, reading)
            : AnswerWithoutReading(nutrient, question) ?? OutsideDomain(nutrient, question);
    }

    /// <summary>The reading of the report that the system takes for this nutrient and crop row; null for none.</summary>
    internal DomainReading? ReadingFor(PlantNutrient nutrient, SystemRequest question)
    {
        foreach (var test in Accepts)
        {
            if (
                test.Nutrient == nutrient
                && test.Crops.Contains(question.Crop.Row)
                && ReportReadings.Find(question.Report, test.Analyte, test.Extractants, test.Unit) is { } found
            )
            {
                return new(nutrient, found.Reading, found.Value, test.Unit);
            }
        }

        return null;
    }

    private UnansweredNutrient OutsideDomain(PlantNutrient nutrient, SystemRequest question)
    {
        string code =
            FirstTest(nutrient, question.Crop.Row) is not { } test ? NutrientCodes.NoCropRow
            : ReportReadings.Holds(question.Report, test.Analyte) ? NutrientCodes.TestNotAccepted
            : NutrientCodes.TestMissing;
        return new(this, question, nutrient, code);
    }

    /// <summary>Why a nutrient lies outside what the system accepts, in one sentence.</summary>
    internal string WhyOutsideDomain(PlantNutrient nutrient, SystemRequest question)
    {
        ImmutableArray<AcceptedTest> tests =
        [
            .. Accepts.Where(t => t.Nutrient == nutrient && t.Crops.Contains(question.Crop.Row)),
        ];
        if (tests.IsEmpty)
        {
            return $"it has no row for {CropRows.WordsFor(question.Crop.Row)}";
        }

        var given = question.Report.FindAll(tests[0].Analyte);
        return given.IsEmpty ? $"the report holds no {SoilWords.For(tests[0].Analyte)}; it was made for {Wanted(tests)}"
            : ReadingTwice.OfAnalyte(question.Report, tests[0].Analyte).FirstOrDefault() is { } twice
                ? $"it needs one reading. {twice.Text}"
            : $"it was made for {Wanted(tests)}, the report gives {Given(given)}";
    }

    private AcceptedTest? FirstTest(PlantNutrient nutrient, CropRow crop)
    {
        foreach (var test in Accepts)
        {
            if (test.Nutrient == nutrient && test.Crops.Contains(crop))
            {
                return test;
            }
        }

        return null;
    }

    private static string Wanted(ImmutableArray<AcceptedTest> tests) => string.Join(" or ", tests.Select(t => t.ToString()));

    private static string Given(ImmutableArray<SoilReading> readings) =>
        string.Join(" and ", readings.Select(g => $"{SoilWords.For(g.Extractant)} in {SoilWords.For(g.Unit)}"));
}
