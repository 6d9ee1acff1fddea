using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

/// <summary>Shelves drawn from a seed: analyses and prices of the kind a store has, and every awkward case.</summary>
/// <remarks>By the seed: every fifth shelf holds duplicates, every seventh free products, every third prices in whole units,
/// every fourth tight caps (equalities and zeros among them), every eleventh tiny or empty needs.</remarks>
internal static class RandomShelves
{
    private static readonly double[] PackagePounds = [50, 50, 50, 40, 25];

    internal static PackageProblem Draw(int seed) =>
        Draw(new Random(seed), products: 2 + (seed % 11), nutrients: 1 + (seed % 8), seed);

    internal static PackageProblem Draw(Random random, int products, int nutrients, int kind)
    {
        var problem = new PackageProblem(nutrients, products);
        for (int product = 0; product < products; product++)
        {
            if (product > 0 && kind % 5 == 0 && random.Next(3) == 0)
            {
                Duplicate(problem, random.Next(product), product);
                continue;
            }

            double pounds = PackagePounds[random.Next(PackagePounds.Length)];
            int main = random.Next(nutrients);
            for (int nutrient = 0; nutrient < nutrients; nutrient++)
            {
                // Every product carries a main nutrient and one or two others; minor nutrients come in small shares.
                int most = nutrient < 3 ? 46 : 20;
                bool holds = nutrient == main || random.Next(nutrients) == 0;
                problem[nutrient, product] = holds ? pounds * random.Next(1, most) / 100 : 0;
            }

            problem.Price[product] = kind % 7 == 0 && random.Next(4) == 0 ? 0
                : kind % 3 == 0 ? random.Next(8, 60) : random.Next(800, 6000) / 100.0;
        }

        for (int nutrient = 0; nutrient < nutrients; nutrient++)
        {
            bool needed = random.Next(4) > 0 && (products >= nutrients || random.Next(2) == 0);
            problem.Need[nutrient] = !needed ? 0 : kind % 11 == 0 ? random.Next(1, 9) / 8.0 : random.Next(1, 60);
            if (random.Next(kind % 4 == 0 ? 2 : 5) == 0)
            {
                problem.Cap[nutrient] = random.Next(8) == 0 ? problem.Need[nutrient] : problem.Need[nutrient] + random.Next(1, 30);
            }
        }

        return problem;
    }

    private static void Duplicate(PackageProblem problem, int from, int to)
    {
        problem.Price[to] = problem.Price[from];
        for (int nutrient = 0; nutrient < problem.Nutrients; nutrient++)
        {
            problem[nutrient, to] = problem[nutrient, from];
        }
    }
}
