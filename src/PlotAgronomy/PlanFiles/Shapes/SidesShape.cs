using System.Collections.Immutable;
using PlotAgronomy.Land;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>Measured sides; each form of plot has its own.</summary>
internal sealed class SidesShape : PlanShape<PlotArea>
{
    private const string FormInWords =
        "Form of the plot. rectangle: `length` and `width`. triangle: `a`, `b`, `c`. trapezoid: `a`, `b` and the `length` "
        + "between them. circle: `radius`. l-shape: `length`, `width`, `missingLength`, `missingWidth`. sides-and-diagonals, for "
        + "four sides or more: `around` and `diagonals`.";

    private const int FewestSides = 3;

    private readonly PlanField<MeasuredLength> length;
    private readonly PlanField<MeasuredLength> width;
    private readonly PlanField<MeasuredLength> a;
    private readonly PlanField<MeasuredLength> b;
    private readonly PlanField<MeasuredLength> c;
    private readonly PlanField<MeasuredLength> radius;
    private readonly PlanField<MeasuredLength> missingLength;
    private readonly PlanField<MeasuredLength> missingWidth;
    private readonly PlanField<ImmutableArray<MeasuredLength>> around;
    private readonly PlanField<ImmutableArray<MeasuredLength>> diagonals;
    private readonly PlanField<PaceCalibration> pace;

    /// <param name="pace">Field of the plan: the owner's own pace.</param>
    internal SidesShape(PlanField<PaceCalibration> pace)
        : base("sides", "Taped or paced sides of the plot.")
    {
        this.pace = pace;
        var form = Required("shape", Hyphened<PlotForm>(), FormInWords, s => s.Sides?.Form);
        const string Long = "Long side of a rectangle or an L, or the height between the parallel sides of a trapezoid.";
        length = Side("length", "210 ft", Long, (PlotForm.Rectangle, 0), (PlotForm.Trapezoid, 2), (PlotForm.LShape, 0));
        width = Side("width", "130 ft", "Short side of a rectangle or an L.", (PlotForm.Rectangle, 1), (PlotForm.LShape, 1));
        const string One = "First side of a triangle; first parallel side of a trapezoid.";
        a = Side("a", "200 ft", One, (PlotForm.Triangle, 0), (PlotForm.Trapezoid, 0));
        const string Two = "Second side of a triangle; second parallel side of a trapezoid.";
        b = Side("b", "180 ft", Two, (PlotForm.Triangle, 1), (PlotForm.Trapezoid, 1));
        c = Side("c", "150 ft", "Third side of a triangle.", (PlotForm.Triangle, 2));
        radius = Side("radius", "60 ft", "Radius of a circle.", (PlotForm.Circle, 0));
        missingLength = Side("missingLength", "80 ft", "What is missing of an L along its length.", (PlotForm.LShape, 2));
        missingWidth = Side("missingWidth", "60 ft", "What is missing of an L along its width.", (PlotForm.LShape, 3));
        const string InOrder = "Every side in order round the plot; the first leads from corner 1 to corner 2.";
        around = Optional("around", Lengths("142 ft", FewestSides), InOrder, s => Around(s)?.Sides);
        const string Across =
            "Diagonals from corner 1, where the first side begins, to corners 3, 4 and so on: three fewer than sides.";
        diagonals = Optional("diagonals", Lengths("180 ft", 0), Across, s => Around(s)?.Diagonals);

        ReadAs(at =>
        {
            var chosen = at.Get(form);
            PlanField[] needed = Needed(chosen);
            string what =
                chosen == PlotForm.SidesAndDiagonals ? "a plot by sides and diagonals"
                : chosen == PlotForm.LShape ? "an L"
                : $"a {Words[chosen]}";
            foreach (var missing in needed.Where(f => f != diagonals && !at.Has(f)))
            {
                at.Report(form, $"{what} needs the side '{missing.Name}'");
            }

            foreach (var other in Fields.Where(f => f != form && !needed.Contains(f) && at.Has(f)))
            {
                string names = string.Join(", ", needed.Select(f => f.Name));
                at.Report(other, $"{what} has no side '{other.Name}'; it needs {names}");
            }

            if (chosen != PlotForm.SidesAndDiagonals)
            {
                MeasuredLength[] sides = [.. needed.OfType<PlanField<MeasuredLength>>().Select(at.Get)];
                return at.Try(form, () => PlotArea.FromSides(chosen, sides));
            }

            var (walked, across) = (at.Get(around), at.All(diagonals));
            if (!at.IsWhole(around) || (at.Has(diagonals) && !at.IsWhole(diagonals)))
            {
                throw PlanPart.Unread();
            }

            if (walked.Length == across.Length + FewestSides)
            {
                foreach (var open in new DiagonalTriangles(walked, across).Open)
                {
                    at.ReportItem(open.Diagonal is null ? around : diagonals, open.Diagonal ?? 0, open.Question);
                }

                if (new DiagonalTriangles(walked, across).Open.Any())
                {
                    throw PlanPart.Unread();
                }
            }

            return at.Try(at.Has(diagonals) ? diagonals : around, () =>
                PlotArea.FromSidesAndDiagonals(walked, (IReadOnlyList<MeasuredLength>)across)
            );
        });
    }

    private static EnumWords<PlotForm> Words { get; } = EnumWords<PlotForm>.FromNames();

    /// <summary>What a form is measured by, in the order in which its area holds it.</summary>
    private PlanField[] Needed(PlotForm form) =>
        form switch
        {
            PlotForm.Rectangle => [length, width],
            PlotForm.Triangle => [a, b, c],
            PlotForm.Trapezoid => [a, b, length],
            PlotForm.Circle => [radius],
            PlotForm.LShape => [length, width, missingLength, missingWidth],
            _ => [around, diagonals],
        };

    /// <param name="name">Name in the file.</param>
    /// <param name="example">Example.</param>
    /// <param name="meaning">One sentence.</param>
    /// <param name="places">The forms that have this side, and which of their sides it is.</param>
    private PlanField<MeasuredLength> Side(
        string name,
        string example,
        string meaning,
        params (PlotForm Form, int Place)[] places
    ) =>
        Optional(name, new PlanWalked(example, pace), meaning, area =>
            area.Sides is var (form, sides) && Array.FindIndex(places, p => p.Form == form) is >= 0 and var i
                ? sides[places[i].Place]
                : null
        );

    private PlanList<MeasuredLength, MeasuredLength> Lengths(string example, int fewest) =>
        List(new PlanWalked(example, pace), fewest);

    private static (ImmutableArray<MeasuredLength> Sides, ImmutableArray<MeasuredLength> Diagonals)? Around(PlotArea area)
    {
        if (area.Sides is not (PlotForm.SidesAndDiagonals, var lengths))
        {
            return null;
        }

        int sides = (lengths.Length + FewestSides) / 2;
        return ([.. lengths.Take(sides)], [.. lengths.Skip(sides)]);
    }
}
