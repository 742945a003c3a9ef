namespace Estimator.Engine.Learning;

/// <summary>Linear equations with a symmetric matrix whose pivots are all above zero, in decimals: divided once into L D Lᵀ, solved for any right side.</summary>
/// <remarks>No square root is taken and no row is exchanged, so the same equations give the same digits everywhere. Source: Golub and Van Loan, Matrix Computations, section 4.1, from memory.</remarks>
internal sealed class SymmetricSystem
{
    private readonly decimal[,] _lower;
    private readonly decimal[] _pivots;

    /// <summary>Divides a matrix.</summary>
    /// <param name="matrix">The matrix; its lower half is read.</param>
    /// <exception cref="ArgumentException">A pivot is zero or below: the equations do not settle every unknown.</exception>
    internal SymmetricSystem(decimal[,] matrix)
    {
        Size = matrix.GetLength(0);
        (_lower, _pivots) = (new decimal[Size, Size], new decimal[Size]);
        for (var column = 0; column < Size; column++)
        {
            _pivots[column] = matrix[column, column] - Enumerable.Range(0, column).Sum(k => _lower[column, k] * _lower[column, k] * _pivots[k]);
            if (_pivots[column] <= 0)
            {
                throw new ArgumentException($"Pivot {column} is {_pivots[column]}; above zero is accepted.", nameof(matrix));
            }

            for (var row = column + 1; row < Size; row++)
            {
                _lower[row, column] = (matrix[row, column] - Enumerable.Range(0, column).Sum(k => _lower[row, k] * _lower[column, k] * _pivots[k])) / _pivots[column];
            }
        }
    }

    /// <summary>How many unknowns.</summary>
    internal int Size { get; }

    /// <summary>The unknowns for a right side.</summary>
    internal decimal[] Solve(IReadOnlyList<decimal> right)
    {
        var found = new decimal[Size];
        for (var row = 0; row < Size; row++)
        {
            found[row] = right[row] - Enumerable.Range(0, row).Sum(k => _lower[row, k] * found[k]);
        }

        for (var row = Size - 1; row >= 0; row--)
        {
            found[row] = (found[row] / _pivots[row]) - Enumerable.Range(row + 1, Size - row - 1).Sum(k => _lower[k, row] * found[k]);
        }

        return found;
    }
}
