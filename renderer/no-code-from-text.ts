import { z } from 'zod';

/**
 * The page's policy forbids making code from text, which zod would try: imported before anything
 * that parses.
 */
z.config({ jitless: true });
