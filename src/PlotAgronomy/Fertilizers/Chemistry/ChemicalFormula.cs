using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>A formula such as <c>Ca(H2PO4)2.H2O</c>, counted and weighed.</summary>
internal sealed class ChemicalFormula
{
    /// <summary>What was read already, by form: the same whoever reads it.</summary>
    private static readonly ChemicalFormula?[] Known = new ChemicalFormula?[Enum.GetValues<ChemicalForm>().Length];

    private ChemicalFormula(string formula)
    {
        Atoms = Count(formula);
        MolarMass = Atoms.Sum(a => a.Value * AtomicMasses.Of(a.Key));
    }

    /// <summary>Number of atoms of each element.</summary>
    internal IReadOnlyDictionary<string, int> Atoms { get; }

    /// <summary>In g/mol.</summary>
    internal double MolarMass { get; }

    internal static ChemicalFormula Of(ChemicalForm form) => Known[(int)form] ??= new(Written(form));

    private static string Written(ChemicalForm form) =>
        form switch
        {
            ChemicalForm.Nitrogen => "N",
            ChemicalForm.Nitrate => "NO3",
            ChemicalForm.Ammonium => "NH4",
            ChemicalForm.Ammonia => "NH3",
            ChemicalForm.Phosphorus => "P",
            ChemicalForm.Phosphate => "P2O5",
            ChemicalForm.Potassium => "K",
            ChemicalForm.Potash => "K2O",
            ChemicalForm.PotassiumChloride => "KCl",
            ChemicalForm.PotassiumSulfate => "K2SO4",
            ChemicalForm.PotassiumNitrate => "KNO3",
            ChemicalForm.MonopotassiumPhosphate => "KH2PO4",
            ChemicalForm.Chlorine => "Cl",
            ChemicalForm.Sodium => "Na",
            ChemicalForm.SodiumOxide => "Na2O",
            ChemicalForm.SodiumChloride => "NaCl",
            ChemicalForm.SodiumNitrate => "NaNO3",
            ChemicalForm.Sulfur => "S",
            ChemicalForm.Sulfate => "SO4",
            ChemicalForm.SulfurTrioxide => "SO3",
            ChemicalForm.Calcium => "Ca",
            ChemicalForm.CalciumOxide => "CaO",
            ChemicalForm.CalciumCarbonate => "CaCO3",
            ChemicalForm.CalciumHydroxide => "Ca(OH)2",
            ChemicalForm.Dolomite => "CaMg(CO3)2",
            ChemicalForm.CalciumSulfate => "CaSO4",
            ChemicalForm.Gypsum => "CaSO4.2H2O",
            ChemicalForm.MonocalciumPhosphate => "Ca(H2PO4)2.H2O",
            ChemicalForm.Magnesium => "Mg",
            ChemicalForm.MagnesiumOxide => "MgO",
            ChemicalForm.MagnesiumCarbonate => "MgCO3",
            ChemicalForm.MagnesiumSulfate => "MgSO4",
            ChemicalForm.Kieserite => "MgSO4.H2O",
            ChemicalForm.EpsomSalts => "MgSO4.7H2O",
            ChemicalForm.Boron => "B",
            ChemicalForm.BoronOxide => "B2O3",
            ChemicalForm.Borax => "Na2B4O7.10H2O",
            ChemicalForm.BoratePentahydrate => "Na2B4O7.5H2O",
            ChemicalForm.BoricAcid => "H3BO3",
            ChemicalForm.Zinc => "Zn",
            ChemicalForm.ZincOxide => "ZnO",
            ChemicalForm.ZincSulfate => "ZnSO4.H2O",
            ChemicalForm.Manganese => "Mn",
            ChemicalForm.ManganeseSulfate => "MnSO4.H2O",
            ChemicalForm.ManganeseSulfateTetrahydrate => "MnSO4.4H2O",
            ChemicalForm.AmmoniumNitrate => "NH4NO3",
            ChemicalForm.AmmoniumSulfate => "(NH4)2SO4",
            ChemicalForm.Urea => "CO(NH2)2",
            ChemicalForm.MonoammoniumPhosphate => "NH4H2PO4",
            ChemicalForm.DiammoniumPhosphate => "(NH4)2HPO4",
            _ => throw new InvalidOperationException($"No formula for {FertilizerWords.Forms[form]}."),
        };

    private static Dictionary<string, int> Count(string formula)
    {
        var atoms = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (string part in formula.Split('.'))
        {
            int at = 0;
            int count = Number(part, ref at);
            Read(part, ref at, count, atoms);
        }

        return atoms;
    }

    private static void Read(string text, ref int at, int times, Dictionary<string, int> atoms)
    {
        while (at < text.Length && text[at] != ')')
        {
            if (text[at] == '(')
            {
                int close = text.IndexOf(')', at),
                    after = close + 1;
                int inside = at + 1,
                    count = Number(text, ref after);
                Read(text, ref inside, times * count, atoms);
                at = after;
                continue;
            }

            int length = at + 1 < text.Length && char.IsAsciiLetterLower(text[at + 1]) ? 2 : 1;
            string element = text.Substring(at, length);
            at += length;
            atoms[element] = atoms.GetValueOrDefault(element) + (times * Number(text, ref at));
        }
    }

    /// <summary>The number at a place; one when none stands there.</summary>
    private static int Number(string text, ref int at)
    {
        int number = 0,
            start = at;
        for (; at < text.Length && char.IsAsciiDigit(text[at]); at++)
        {
            number = (10 * number) + (text[at] - '0');
        }

        return at == start ? 1 : number;
    }
}
