using PlotAgronomy.Liming;

namespace PlotAgronomy.Records;

/// <summary>The fields of a liming material.</summary>
internal static class MaterialFields
{
    private const char ValueMark = '=';
    private const string EqualToOneTon = "lb-equal-to-one-ton";

    internal static void Write(FieldWriter to, LimingMaterial material)
    {
        to.Text("material", material.Name);
        to.Choice<LimingForm>("form", material.Form, LimingWords.Forms);
        to.Quantity("cce", material.CcePercent, "%");
        to.List(
            "passing",
            material.Sieves?.Passing.Select(p => $"{ExactText.Of(p.Mesh)}{ValueMark}{ExactText.Of(p.Passing.Value, shift: 2)}")
                ?? []
        );
        to.Value<Fraction>("moisture", material.Moisture == Fraction.Zero ? null : material.Moisture);
        to.Value("magnesium", material.Magnesium);
        to.List("figures", material.StatedFigures.Select(Figure));
    }

    internal static LimingMaterial Read(FieldReader from)
    {
        string name = from.Text("material");
        var form = from.Choice("form", LimingWords.Forms);
        double? cce = from.QuantityOrNull("cce", "%");
        var sieves = from.Made("passing", Sieves);
        var moisture = from.ValueOrNull<Fraction>("moisture");
        var magnesium = from.ValueOrNull<Fraction>("magnesium");
        LimeFigure[] figures = from.Try<LimeFigure[]>("figures", () => [.. from.List("figures").Select(Figure)]);
        if (form == LimingMaterial.PureCarbonate.Form && name == LimingMaterial.PureCarbonate.Name)
        {
            return LimingMaterial.PureCarbonate;
        }

        return from.Try("material", () => Made(name, form, cce, sieves, moisture ?? default, magnesium, figures))
            ?? throw from.Problem("cce", $"is missing: {LimingMaterial.EquivalentAsked}");
    }

    private static LimingMaterial? Made(
        string name,
        LimingForm form,
        double? cce,
        SieveAnalysis? sieves,
        Fraction moisture,
        Fraction? magnesium,
        LimeFigure[] figures
    ) =>
        cce is { } percent
            ? figures.Aggregate(LimingMaterial.FromAnalysis(name, form, percent, sieves, moisture, magnesium), (m, f) =>
                m.WithFigure(f)
            )
        : figures.Length > 0
            ? figures.Skip(1).Aggregate(LimingMaterial.FromLabel(name, form, figures[0]), (m, f) => m.WithFigure(f))
        : LimeBasis.Everything.FirstOrDefault(b => b.Name == name) is { } basis ? LimingMaterial.FromBasis(basis)
        : null;

    private static string Figure(LimeFigure figure) =>
        figure.PoundsEqualToOneTon is { } pounds
            ? $"{EqualToOneTon}{ValueMark}{ExactText.Of(pounds)}"
            : $"{figure.Index.Id}{ValueMark}{ExactText.Of(figure.Value)}";

    private static LimeFigure Figure(string text)
    {
        var (id, value) = ExactText.Halves(text, $"{ValueMark}");
        return id == EqualToOneTon
            ? LimeFigure.FromPoundsEqualToOneTon(ExactText.Number(value))
            : LimeFigure.FromValue(LimeIndex.Find(id), ExactText.Number(value));
    }

    private static SieveAnalysis? Sieves(string text) =>
        SieveAnalysis.FromFractions([.. text.Split(FieldText.ListMark).Select(Sieve)]);

    private static (int Mesh, Fraction Passing) Sieve(string text)
    {
        var (mesh, percent) = ExactText.Halves(text, $"{ValueMark}");
        return (checked((int)ExactText.Number(mesh)), Fraction.FromValue(ExactText.Number(percent, shift: 2)));
    }
}
